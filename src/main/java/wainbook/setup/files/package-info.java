/** The files by which a works is set up: read whole, with every fault at its place, or not at all. */
package wainbook.setup.files;
