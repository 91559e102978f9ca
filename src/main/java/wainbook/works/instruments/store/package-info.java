/** The tool store: who has which instrument, and since when. */
package wainbook.works.instruments.store;
