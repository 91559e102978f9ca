/** What a kind of vehicle looks like, and where its zones lie. */
package wainbook.process.outline;
