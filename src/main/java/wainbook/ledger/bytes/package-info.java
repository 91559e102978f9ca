/** The one form in bytes of what the ledger keeps. */
package wainbook.ledger.bytes;
