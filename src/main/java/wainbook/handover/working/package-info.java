/** Workings that decide what a document says, from figures and points that lie in rule files. */
package wainbook.handover.working;
