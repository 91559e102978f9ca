/** What is wrong with a check sheet that is to be released. */
package wainbook.process.rule;
