/** What is read from things: identification numbers and their check characters. */
package wainbook.engineering.measurement;
