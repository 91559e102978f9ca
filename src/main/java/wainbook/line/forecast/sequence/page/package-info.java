/** The page of the order of entry, and the same for scripts. */
package wainbook.line.forecast.sequence.page;
