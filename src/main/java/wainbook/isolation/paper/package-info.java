/** An isolation that was kept on a paper form while the tool was down. */
package wainbook.isolation.paper;
