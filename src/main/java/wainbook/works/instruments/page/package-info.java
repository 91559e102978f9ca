/** The pages of the instruments. */
package wainbook.works.instruments.page;
