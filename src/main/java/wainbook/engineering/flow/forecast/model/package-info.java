/** The line as a forecast sees it: plain records, in minutes since the forecast's origin, which is minute 0. */
package wainbook.engineering.flow.forecast.model;
