/** A book asked for and made behind the page; the handover set, and freezing it. */
package wainbook.book.set;
