package wainbook.permit.page;

import java.util.List;

/** The permits of the works: the open ones, and the latest that are over; those that were written on paper beside them. */
public record ListView(List<PermitLine> open, List<PermitLine> over, List<PaperPermitLine> onPaper) {}
