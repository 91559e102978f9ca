/** Readings of check items as the record keeps them, for whoever looks at many of them together. */
package wainbook.quality.reading;
