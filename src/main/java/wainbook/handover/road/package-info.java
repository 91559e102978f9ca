/** The gate before any use on a road: what it asks for, how it is signed, how it ends, and the log of drives. */
package wainbook.handover.road;
