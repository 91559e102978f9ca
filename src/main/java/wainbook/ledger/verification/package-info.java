/** Whether every byte still follows from the one before it. */
package wainbook.ledger.verification;
