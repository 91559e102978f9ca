/** What came of the line over a period, from the record. */
package wainbook.line.measure;
