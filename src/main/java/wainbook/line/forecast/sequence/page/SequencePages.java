package wainbook.line.forecast.sequence.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of the order of entry. */
@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class SequencePages {

    private SequencePages() {}

    static native TemplateInstance sequence(SequenceView view);
}
