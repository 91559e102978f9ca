/** What a vehicle has to pass after the line, by appointment. */
package wainbook.works.appointment;
