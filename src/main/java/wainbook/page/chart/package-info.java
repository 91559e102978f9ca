/** Charts drawn on the server: values in a row, with the levels that they are held against. */
package wainbook.page.chart;
