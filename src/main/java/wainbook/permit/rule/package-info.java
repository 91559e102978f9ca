/** When a permit is issued and may go its next step, and what cannot go on together. */
package wainbook.permit.rule;
