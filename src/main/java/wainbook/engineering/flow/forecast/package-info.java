/** When the vehicles on the line will be finished, with what odds, and what their time goes into. */
package wainbook.engineering.flow.forecast;
