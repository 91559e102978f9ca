/** What people do about a campaign. */
package wainbook.trace.campaign.act;
