/** The hours of the played works and its clock. */
package wainbook.rehearsal.time;
