/** Locks, and the proof that a circuit is dead. */
package wainbook.isolation.proof;
