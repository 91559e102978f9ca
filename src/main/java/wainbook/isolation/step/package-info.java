/** The acts of an isolation: a step as it is asked for, the facts of the day, and what comes of it. */
package wainbook.isolation.step;
