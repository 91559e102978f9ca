/** Vehicles driven through a line by drawn times, again and again. */
package wainbook.engineering.flow.simulation;
