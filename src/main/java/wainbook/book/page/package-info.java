/** The vehicle page. */
package wainbook.book.page;
