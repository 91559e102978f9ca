/** How good a forecast is, and how sure its own figures are. */
package wainbook.engineering.flow.score;
