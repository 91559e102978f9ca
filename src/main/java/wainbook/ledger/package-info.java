/**
 * The record of the works: streams of entries that are only ever added to, chained by hash, and all that proves it.
 * The bytes are described in {@code docs/formats/ledger.md}.
 */
package wainbook.ledger;
