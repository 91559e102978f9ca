package wainbook.works.instruments.drift;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of what is due. */
@CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
final class DuePages {

    private DuePages() {}

    static native TemplateInstance due(DueList list);
}
