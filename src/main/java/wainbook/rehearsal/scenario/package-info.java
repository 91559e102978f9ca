/** What is written of the demonstration: its vehicles, papers and photographs. */
package wainbook.rehearsal.scenario;
