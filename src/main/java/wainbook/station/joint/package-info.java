/** What was read at a joint's fasteners, one by one, and in which order they are tightened. */
package wainbook.station.joint;
