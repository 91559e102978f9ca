/** Which vehicles a query finds, and by which places of their records. */
package wainbook.trace.campaign.scope;
