/** The first start of a works that is not the demo: who may begin it, and with what. */
package wainbook.setup.start;
