/** Dice with a seed, and how often a thing goes wrong. */
package wainbook.rehearsal.chance;
