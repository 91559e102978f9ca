/** Each room's entries told in words, and what a verdict rested on. */
package wainbook.book.telling;
