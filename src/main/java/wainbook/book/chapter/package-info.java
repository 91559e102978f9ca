/** What stands in a build book, chapter by chapter. People are numbers here. */
package wainbook.book.chapter;
