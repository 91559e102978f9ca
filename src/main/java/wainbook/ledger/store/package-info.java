/** Entries and streams as the database keeps them. Only the ledger itself reads and writes these. */
package wainbook.ledger.store;
