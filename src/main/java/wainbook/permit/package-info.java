/** Permits to work besides those on high voltage: issued, received, handed back and closed by two people. */
package wainbook.permit;
