/** What a vehicle still has to pass after the line, when, and how it came out. */
package wainbook.line.appointment;
