/** Work at the vehicle: what is recorded for each check item, what it is judged by, and how it stands. */
package wainbook.station;
