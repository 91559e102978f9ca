/** Documents that the works itself issues: texts that it can change, filled from the record, signed by somebody appointed. */
package wainbook.handover.issue;
