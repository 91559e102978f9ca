/** How Wainbook looks and speaks: words, layout, and the parts that every page is made of. */
package wainbook.page;
