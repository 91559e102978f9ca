/** The work at one vehicle, from its arrival to its leaving. */
package wainbook.rehearsal.vehicle;
