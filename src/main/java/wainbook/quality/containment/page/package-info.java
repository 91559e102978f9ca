/** Containments as people and scripts see them. */
package wainbook.quality.containment.page;
