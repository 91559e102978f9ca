/** Pages, forms and API of packs. */
package wainbook.pack.page;
