/** What the pages of safety show. */
package wainbook.safety.page.view;
