/** Visitors in a high-voltage area: induction, host, in and out. */
package wainbook.safety.visit;
