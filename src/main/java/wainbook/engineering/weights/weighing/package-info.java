/** Weighing and what it says of a prediction; the height of what was weighed. */
package wainbook.engineering.weights.weighing;
