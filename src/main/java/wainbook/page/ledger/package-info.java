/** The record for those who check it: what a verification finds, and any stream byte for byte. */
package wainbook.page.ledger;
