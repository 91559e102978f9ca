/** Work orders: what is to be built for whom, from which donor, where the vehicle stands, and what holds it. */
package wainbook.order;
