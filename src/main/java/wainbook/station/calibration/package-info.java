/** What was read out of a vehicle's control units. */
package wainbook.station.calibration;
