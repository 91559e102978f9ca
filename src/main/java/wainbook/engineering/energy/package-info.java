/** What a duty takes from the packs, how many packs it needs, and how they are charged. */
package wainbook.engineering.energy;
