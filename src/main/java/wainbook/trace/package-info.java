/** One search: from a number on a part, an instrument or a person to the vehicles and places in their record. */
package wainbook.trace;
