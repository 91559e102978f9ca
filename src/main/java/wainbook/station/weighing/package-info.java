/** What the sheets' weighings say to the specification of an order. */
package wainbook.station.weighing;
