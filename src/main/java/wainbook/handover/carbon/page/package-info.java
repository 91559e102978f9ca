/** The carbon statement on its page and for scripts. */
package wainbook.handover.carbon.page;
