/** What the stations of a line are doing, who is the cause of their waiting, and what came of a period. */
package wainbook.engineering.flow.status;
