package wainbook.works.instruments.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages about instruments. */
@CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
final class InstrumentPages {

    private InstrumentPages() {}

    static native TemplateInstance instruments(InstrumentViews.Listed list);

    static native TemplateInstance register(InstrumentViews.Registering view);

    static native TemplateInstance instrument(InstrumentViews.One view);
}
