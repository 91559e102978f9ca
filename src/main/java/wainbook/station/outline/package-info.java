/** The drawings of the station page: the vehicle with its marks, and joints as bolt patterns. */
package wainbook.station.outline;
