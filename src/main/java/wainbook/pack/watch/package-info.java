/** When a damaged pack is looked at, and when the fire service is called. Pure. */
package wainbook.pack.watch;
