/** The line as a whole: vehicles move from station to station, off it and back. */
package wainbook.line;
