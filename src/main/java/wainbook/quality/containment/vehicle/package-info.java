/** What is in doubt at one vehicle. */
package wainbook.quality.containment.vehicle;
