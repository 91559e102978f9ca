/** Calibrations of instruments: as found, as left, and what follows from them. */
package wainbook.works.instruments.calibration;
