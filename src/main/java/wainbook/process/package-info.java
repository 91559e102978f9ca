/** How a works converts a kind of vehicle: stages, routes, check sheets, joints and what depends on what. */
package wainbook.process;
