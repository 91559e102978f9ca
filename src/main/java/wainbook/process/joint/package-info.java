/** A joint and its class: what it can be accepted at, what it does to its bolts, and how it is tightened and checked again. */
package wainbook.process.joint;
