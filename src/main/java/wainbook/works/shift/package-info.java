/** Shifts, the works' own day, and times as the works reads them. */
package wainbook.works.shift;
