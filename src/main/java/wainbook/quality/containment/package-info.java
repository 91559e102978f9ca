/** Containment: what a failed instrument, a bad lot, a wrong revision or an invalid competence puts in doubt, until each reading is decided. */
package wainbook.quality.containment;
