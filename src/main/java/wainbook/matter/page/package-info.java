/** The pages of open matters and nonconformities. */
package wainbook.matter.page;
