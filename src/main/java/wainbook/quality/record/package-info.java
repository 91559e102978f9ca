/** Records that are unlikely to be what was read: questions with their working, never an accusation. */
package wainbook.quality.record;
