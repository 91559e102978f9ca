/** What was typed in from a form. */
package wainbook.paper.page.sent;
