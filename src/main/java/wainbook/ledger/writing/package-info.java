/** One write: a repeated or stale one is told apart, the rest is appended and projected. */
package wainbook.ledger.writing;
