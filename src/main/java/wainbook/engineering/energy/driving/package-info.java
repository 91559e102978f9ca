/** The energy balance of a vehicle on its way: second by second, by segments, and in closed form. */
package wainbook.engineering.energy.driving;
