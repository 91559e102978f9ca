/** What people do with packs. */
package wainbook.pack.act;
