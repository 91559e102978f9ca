/** The isolation plan of a vehicle variant, as the works releases it: what is opened, locked and proved, and where. */
package wainbook.process.plan;
