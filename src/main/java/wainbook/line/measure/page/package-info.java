/** The page of measures of the line. */
package wainbook.line.measure.page;
