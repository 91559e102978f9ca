/** From readings to a value with its uncertainty and its verdict. */
package wainbook.station.determination;
