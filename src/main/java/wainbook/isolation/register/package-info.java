/** The numbered locks, lock boxes, tags and vehicle keys: registered, retired, labelled. */
package wainbook.isolation.register;
