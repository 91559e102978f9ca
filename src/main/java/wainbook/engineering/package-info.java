/** Pure calculations: figures in, a working out. Knows no framework, no clock and no other room. */
package wainbook.engineering;
