/** The pages of campaigns, and their API. */
package wainbook.trace.campaign.page;
