/** The process as pages and for scripts: what is in force, what a revision changes, and the forms by which drafts are written. */
package wainbook.process.page;
