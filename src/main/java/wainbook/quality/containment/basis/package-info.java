/** What each reading rests on: instruments, joints and limits, as a table. */
package wainbook.quality.containment.basis;
