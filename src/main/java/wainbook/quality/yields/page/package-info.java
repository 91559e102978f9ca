/** The page of yields. */
package wainbook.quality.yields.page;
