/** What the pages of containments show. */
package wainbook.quality.containment.page.view;
