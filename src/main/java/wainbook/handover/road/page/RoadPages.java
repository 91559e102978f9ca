package wainbook.handover.road.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

@CheckedTemplate(basePath = "handover", defaultName = CheckedTemplate.ELEMENT_NAME)
final class RoadPages {

    private RoadPages() {}

    static native TemplateInstance road(RoadView view);
}
