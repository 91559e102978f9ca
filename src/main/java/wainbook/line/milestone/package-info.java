/** The milestones of every order: which were reached, and when. */
package wainbook.line.milestone;
