/** In which order the vehicles in front of the line should come onto it. */
package wainbook.line.forecast.sequence;
