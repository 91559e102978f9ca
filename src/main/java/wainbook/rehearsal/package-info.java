/** Plays people of a works through the same acts as theirs, by a clock of its own: the demo, tests, benchmarks. */
package wainbook.rehearsal;
