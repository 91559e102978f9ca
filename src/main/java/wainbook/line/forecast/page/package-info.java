/** The page of the forecast, and the forecast for scripts. */
package wainbook.line.forecast.page;
