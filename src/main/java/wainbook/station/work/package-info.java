/** What a station can work on at a vehicle now, and what keeps it from it. */
package wainbook.station.work;
