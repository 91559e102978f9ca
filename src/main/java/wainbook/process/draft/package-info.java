/** The next revision of a sheet, the joints, a route, a plan or the stages: as a draft, as proposed, as released. */
package wainbook.process.draft;
