/** What stands at a station, and the state of the station. */
package wainbook.line.station;
