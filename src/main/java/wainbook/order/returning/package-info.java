/** A vehicle that was handed over comes back: a new order, on the same vehicle. */
package wainbook.order.returning;
