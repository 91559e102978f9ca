/** Masses and where they stand: loads of the axles, what a payload may be, what was taken out. */
package wainbook.engineering.weights;
