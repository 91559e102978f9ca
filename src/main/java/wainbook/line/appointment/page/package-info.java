/** A vehicle's appointments after the line, on their page and for scripts. */
package wainbook.line.appointment.page;
