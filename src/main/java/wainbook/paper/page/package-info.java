/** The pages and the API of paper. */
package wainbook.paper.page;
