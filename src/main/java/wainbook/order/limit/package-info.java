/** What the law lets a vehicle and its axles weigh: dated rules, read from files. */
package wainbook.order.limit;
