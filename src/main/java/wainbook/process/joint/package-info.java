/** What a joint can be accepted at, what it does to its bolts, and how it is tightened and checked again. */
package wainbook.process.joint;
