/** Permits that were written on paper. */
package wainbook.permit.paper;
