/** The specification of an order: its duty, the vehicle it is worked for, the table of packs, the choice. */
package wainbook.order.specification;
