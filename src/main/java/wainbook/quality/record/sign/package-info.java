/** The signs of an unlikely record, one rule each. */
package wainbook.quality.record.sign;
