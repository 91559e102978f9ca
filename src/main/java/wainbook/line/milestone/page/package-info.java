/** Pages and API of milestones. */
package wainbook.line.milestone.page;
