/** What another calendar, more hands, another station, another order or an earlier release would do for the line. */
package wainbook.line.forecast.whatif;
