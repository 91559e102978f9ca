/** What an operator was promised with an order, and what will prove it. */
package wainbook.order.promise;
