/** What a check item asks and what was said of it, in words. */
package wainbook.station.words;
