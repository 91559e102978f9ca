/** Telling an integrator's address of milestones. */
package wainbook.line.milestone.webhook;
