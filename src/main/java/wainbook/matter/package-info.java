/** What is not as it should be and still open: nonconformities and how they were decided. */
package wainbook.matter;
