/** What a reading is worth once its instrument is in doubt: pure, from histories alone. */
package wainbook.quality.containment.doubt;
