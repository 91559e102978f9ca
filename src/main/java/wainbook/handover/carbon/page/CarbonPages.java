package wainbook.handover.carbon.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

@CheckedTemplate(basePath = "handover", defaultName = CheckedTemplate.ELEMENT_NAME)
final class CarbonPages {

    private CarbonPages() {}

    static native TemplateInstance carbon(CarbonView view);
}
