/**
 * The line over time as railways draw their timetables (the graphic timetable, published by E.-J. Marey in 1885): working time runs
 * to the right, stages run down, each vehicle is one string that steps down through them.
 */
package wainbook.line.stringline;
