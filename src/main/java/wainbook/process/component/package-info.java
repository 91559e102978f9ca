/** Parts that a conversion takes out or puts in, with their masses and places. */
package wainbook.process.component;
