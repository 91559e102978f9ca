/** How a works comes to be: import, first start, command line, and what the rooms are told about each other. */
package wainbook.setup;
