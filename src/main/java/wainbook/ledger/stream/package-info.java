/** The streams that are kept, as a list. */
package wainbook.ledger.stream;
