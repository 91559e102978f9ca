/** What a vehicle leaves with: which documents it needs, which it has, and handing it over. */
package wainbook.handover;
