/** The page of an order’s specification. */
package wainbook.order.specification.page;
