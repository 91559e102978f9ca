/** What the machine must know of the day: people, instruments, the register, the limits. */
package wainbook.isolation.fact;
