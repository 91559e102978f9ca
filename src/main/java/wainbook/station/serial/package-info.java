/** Serial numbers of fitted parts: which stand, and in which vehicle. */
package wainbook.station.serial;
