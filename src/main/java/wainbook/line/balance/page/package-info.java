/** The page of the balance, and the same for scripts. */
package wainbook.line.balance.page;
