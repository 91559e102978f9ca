/** The people who are played, their acts, and the tools they draw. */
package wainbook.rehearsal.crew;
