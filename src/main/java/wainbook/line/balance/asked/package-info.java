/** What a better balance is wanted for, what stands against asking it, and the work that it makes. */
package wainbook.line.balance.asked;
