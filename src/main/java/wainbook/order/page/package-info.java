/** The pages of the orders. */
package wainbook.order.page;
