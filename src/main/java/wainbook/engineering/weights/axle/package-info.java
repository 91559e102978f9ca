/** Axles in groups: how a group shares its load, what lifting an axle does, what people weigh. */
package wainbook.engineering.weights.axle;
