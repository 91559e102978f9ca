/** What a forecast says: when, with what odds, and where the time goes. */
package wainbook.engineering.flow.forecast.outcome;
