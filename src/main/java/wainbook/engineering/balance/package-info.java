/**
 * How work is shared out over the stations of a paced line. The words of the trade: takt, cycle time, station load, precedence;
 * {@link wainbook.engineering.balance.Balance} is the plain question, {@link wainbook.engineering.balance.Search} the same with
 * the rules of a real works.
 */
package wainbook.engineering.balance;
