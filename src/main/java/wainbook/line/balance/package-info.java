/** How the work stands against the takt, and the search for a better balance of it. */
package wainbook.line.balance;
