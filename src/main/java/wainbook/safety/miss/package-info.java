/** Near misses: reported by one touch, looked at, closed with what was changed. */
package wainbook.safety.miss;
