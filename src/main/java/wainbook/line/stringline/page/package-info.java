/** The string-line as part of other pages, loaded after them: it waits for the forecast, and they do not. */
package wainbook.line.stringline.page;
