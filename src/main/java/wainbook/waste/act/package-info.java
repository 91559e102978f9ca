/** What people do with what was taken out, and with containers. */
package wainbook.waste.act;
