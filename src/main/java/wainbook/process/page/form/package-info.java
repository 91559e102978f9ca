/** The forms in which a draft is written, and what is typed into them. */
package wainbook.process.page.form;
