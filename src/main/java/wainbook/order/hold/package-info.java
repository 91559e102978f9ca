/** Holding a vehicle and letting it go on. */
package wainbook.order.hold;
