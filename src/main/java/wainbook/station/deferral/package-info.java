/** Work given to a later stage, and what it bars until it is done. */
package wainbook.station.deferral;
