/** One class for each method of determining a value. */
package wainbook.station.determination.method;
