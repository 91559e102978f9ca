/** The page of a vehicle's book, and its door for scripts. */
package wainbook.book.set.page;
