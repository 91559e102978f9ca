/** Moving a vehicle to its next place. */
package wainbook.line.move;
