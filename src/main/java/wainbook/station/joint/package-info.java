/** What was read at a joint's fasteners, one by one. */
package wainbook.station.joint;
