/** The pages of the line, and the line as the API shows it. */
package wainbook.line.page;
