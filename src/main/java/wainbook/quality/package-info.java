/** What the record itself gives cause to doubt, and what was done about it. */
package wainbook.quality;
