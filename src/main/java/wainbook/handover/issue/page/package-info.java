/** Documents that the works issues, on their pages and for scripts. */
package wainbook.handover.issue.page;
