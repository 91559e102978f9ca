/** What the line has to do, as its released sheets plan it, and what the record says of the time it took. */
package wainbook.line.balance.content;
