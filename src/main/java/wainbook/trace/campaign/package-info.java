/**
 * Campaigns: what is done about vehicles that something was found wrong with after it was built in. The root holds what was
 * said, how each vehicle stands and the rule of every step.
 */
package wainbook.trace.campaign;
