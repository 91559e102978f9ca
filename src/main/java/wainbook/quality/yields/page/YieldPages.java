package wainbook.quality.yields.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of yields. */
@CheckedTemplate(basePath = "quality", defaultName = CheckedTemplate.ELEMENT_NAME)
final class YieldPages {

    private YieldPages() {}

    static native TemplateInstance yields(YieldView view);
}
