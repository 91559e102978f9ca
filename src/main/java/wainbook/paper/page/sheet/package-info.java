/** A form as it is printed, section by section. */
package wainbook.paper.page.sheet;
