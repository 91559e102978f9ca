/** Pages of questions about records, and of the works' agreement to statistics by person. */
package wainbook.quality.record.page;
