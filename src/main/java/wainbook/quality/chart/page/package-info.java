/** The pages of charts. */
package wainbook.quality.chart.page;
