/** What came out right the first time at the gates. */
package wainbook.gate.passage;
