/** What the pages of packs show. */
package wainbook.pack.page.view;
