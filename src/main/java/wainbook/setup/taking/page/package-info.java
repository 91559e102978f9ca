/** The page and the API of taking files. */
package wainbook.setup.taking.page;
