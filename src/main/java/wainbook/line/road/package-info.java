/** Releases of a vehicle for the road, and its drives under them. */
package wainbook.line.road;
