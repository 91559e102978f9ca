/** A vehicle's check sheet exchanged for a newer one. */
package wainbook.station.rebinding;
