/** A check item taken by the person who works on it. */
package wainbook.station.taking;
