/** What a works and an operator do at the handover bay. */
package wainbook.handover.record.act;
