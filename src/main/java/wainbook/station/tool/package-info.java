/** The tools a check item asks for and those lent to the person at hand. */
package wainbook.station.tool;
