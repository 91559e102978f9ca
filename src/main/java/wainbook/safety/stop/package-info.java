/** Safety stops: work stands at a vehicle or a place until a named second person lets it go on. */
package wainbook.safety.stop;
