/** Quantities that are not read but determined from several readings, by a calculation. */
package wainbook.process.determination;
