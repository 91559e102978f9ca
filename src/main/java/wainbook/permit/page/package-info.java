/** Permits as people and scripts see them. */
package wainbook.permit.page;
