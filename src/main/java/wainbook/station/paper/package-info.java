/** Check items as a paper form prints them and as they are typed in from it. */
package wainbook.station.paper;
