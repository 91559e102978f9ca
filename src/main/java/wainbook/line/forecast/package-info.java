/** When the vehicles on the line and in front of it will probably be finished, from the record of those before them. */
package wainbook.line.forecast;
