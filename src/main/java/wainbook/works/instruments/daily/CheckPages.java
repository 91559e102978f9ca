package wainbook.works.instruments.daily;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of a tool's checks. */
@CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
final class CheckPages {

    private CheckPages() {}

    static native TemplateInstance checks(CheckView view);
}
