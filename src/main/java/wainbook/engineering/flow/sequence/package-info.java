/** In which order vehicles that wait should come onto a line: a search over the forecast model. */
package wainbook.engineering.flow.sequence;
