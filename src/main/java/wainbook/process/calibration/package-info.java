/** Calibrations of vehicles' control units: the values that each sets, as they were released. */
package wainbook.process.calibration;
