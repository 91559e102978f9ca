/** Conditions that a works writes itself, over facts of declared types, with an honest third answer: ask. */
package wainbook.predicate;
