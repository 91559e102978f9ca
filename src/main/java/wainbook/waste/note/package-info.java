/** The papers by which waste leaves, as plain rules. */
package wainbook.waste.note;
