/** Recovery rates of what was taken out of one vehicle. */
package wainbook.waste.rate;
