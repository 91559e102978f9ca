/** What is taken out of vehicles, and the containers and notes by which waste leaves the works. */
package wainbook.waste;
