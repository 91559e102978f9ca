/** Parts that are missing for a stage of a vehicle, the days they are expected for, and their coming. */
package wainbook.line.awaited;
