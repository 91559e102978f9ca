package wainbook.trace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of this room. */
@CheckedTemplate(basePath = "trace", defaultName = CheckedTemplate.ELEMENT_NAME)
final class TracePages {

    private TracePages() {}

    static native TemplateInstance trace(Trace trace);

    static native TemplateInstance names(VehicleNames names);
}
