/** Paper for ever: XHTML to PDF/A-3a and PDF/UA-1, equal bytes for equal input. Nothing here knows what is printed. */
package wainbook.print;
