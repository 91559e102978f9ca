/** How an outcome, a fault in what was sent, or a breakdown is told to a script or shown to a person. */
package wainbook.page.api;
