/** What packs hold, and how likely that is enough. */
package wainbook.engineering.energy.store;
