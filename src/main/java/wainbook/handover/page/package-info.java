/** The pages of handing over and of the documents. */
package wainbook.handover.page;
