/** Packs against payload: every number of packs that there is room for, and what rules it out. */
package wainbook.engineering.specification;
