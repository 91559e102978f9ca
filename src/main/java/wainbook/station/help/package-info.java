/** Calls for help from a station, and their answers. */
package wainbook.station.help;
