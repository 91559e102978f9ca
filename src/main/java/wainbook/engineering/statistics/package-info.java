/** Samples: charts of a process, capability, proportions, acceptance of lots. */
package wainbook.engineering.statistics;
