/** How readings were made, and what is usual for them. */
package wainbook.quality.record.made;
