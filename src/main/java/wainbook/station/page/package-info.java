/** The pages of a station. */
package wainbook.station.page;
