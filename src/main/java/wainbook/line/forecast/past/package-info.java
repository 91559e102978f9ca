/** What the record says of the times of vehicles before: their stays at stages, and what stopped them. */
package wainbook.line.forecast.past;
