/** The handover record: how a vehicle is given to its operator, and the receipt that stands for it. */
package wainbook.handover.record;
