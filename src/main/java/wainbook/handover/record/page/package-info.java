/** The handover record and its receipt on their pages and for scripts. */
package wainbook.handover.record.page;
