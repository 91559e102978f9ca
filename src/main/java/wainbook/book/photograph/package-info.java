/** The photographs that a vehicle's record points to: which there are, what each shows, and how they go into a handover set. */
package wainbook.book.photograph;
