/** The documents a vehicle needs: which, and how each one stands. */
package wainbook.handover.document;
