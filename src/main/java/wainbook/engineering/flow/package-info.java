/** How work flows along the line. */
package wainbook.engineering.flow;
