/** Permits to work and sanctions to test, and what work under them may be. */
package wainbook.isolation.permit;
