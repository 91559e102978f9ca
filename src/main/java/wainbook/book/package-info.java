/** The book of one vehicle: its page, and every entry of its record in words. */
package wainbook.book;
