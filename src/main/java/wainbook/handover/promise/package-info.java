/** Promises to the operator beside what proves them. */
package wainbook.handover.promise;
