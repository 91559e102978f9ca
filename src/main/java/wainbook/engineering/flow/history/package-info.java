/** Times to draw, from what the works has recorded. */
package wainbook.engineering.flow.history;
