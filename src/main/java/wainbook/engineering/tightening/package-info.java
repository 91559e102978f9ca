/** Torque, preload, order of tightening, and the decision on a reading. */
package wainbook.engineering.tightening;
