package wainbook.handover.issue.page;

import java.util.List;
import wainbook.handover.issue.Template;

/** The texts of all documents that the works issues. */
public record TextList(List<Template> all) {}
