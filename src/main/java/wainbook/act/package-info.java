/** What every act of the works has in common: who did it and when, and how it came out. */
package wainbook.act;
