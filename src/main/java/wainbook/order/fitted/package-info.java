/** What is fitted to a vehicle against what was specified for it. */
package wainbook.order.fitted;
