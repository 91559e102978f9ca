/** Charts of what is measured, what they signal, and how well it keeps to its limits. */
package wainbook.quality.chart;
