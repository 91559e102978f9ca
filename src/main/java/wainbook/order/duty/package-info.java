/** What an operator’s duty, a donor’s chassis and a chosen specification are, as the ledger keeps them. */
package wainbook.order.duty;
