/** The letter to an operator. */
package wainbook.trace.campaign.letter;
