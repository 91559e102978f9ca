/** Check sheets, their items, and what an item asks. */
package wainbook.process.sheet;
