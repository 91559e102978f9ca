/** What was forecast against what came. */
package wainbook.line.forecast.score;
