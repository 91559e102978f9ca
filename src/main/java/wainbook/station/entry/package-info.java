/** Recording and striking out what was done at a check item. */
package wainbook.station.entry;
