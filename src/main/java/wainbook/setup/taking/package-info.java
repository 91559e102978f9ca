/** Taking the files of a works: what would change against the record, who may, and all of it at once; and giving them out. */
package wainbook.setup.taking;
