/** A vehicle's release for the road and its drives, on their page and for scripts. */
package wainbook.handover.road.page;
