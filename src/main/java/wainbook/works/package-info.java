/** The works itself: its people with their competences, its instruments, and who may sign in. */
package wainbook.works;
