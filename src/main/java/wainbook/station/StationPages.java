package wainbook.station;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of this room. */
@CheckedTemplate(basePath = "station", defaultName = CheckedTemplate.ELEMENT_NAME)
final class StationPages {

    private StationPages() {}

    static native TemplateInstance station(StationView view);

    static native TemplateInstance later(DeferralView view);
}
