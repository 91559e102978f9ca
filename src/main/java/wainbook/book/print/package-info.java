/** How a build book is set: chapters of blocks, drawn once and printed or put on a site. */
package wainbook.book.print;
