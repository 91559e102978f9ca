/** What the record says of where vehicles stood and how their gates were answered. */
package wainbook.gate.past;
