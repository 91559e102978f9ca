/** Files kept as evidence, each under the hash of its bytes. */
package wainbook.ledger.evidence;
