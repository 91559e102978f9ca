/** The parts awaited for a vehicle, on their page and for scripts. */
package wainbook.line.awaited.page;
