/** Forecasts kept each working day, and those that the past is tested by. */
package wainbook.line.forecast.kept;
