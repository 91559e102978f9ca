/** How much comes out right the first time, and what does not. */
package wainbook.quality.yields;
