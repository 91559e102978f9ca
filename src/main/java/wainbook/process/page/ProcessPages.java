package wainbook.process.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of this room. */
@CheckedTemplate(basePath = "process", defaultName = CheckedTemplate.ELEMENT_NAME)
final class ProcessPages {

    private ProcessPages() {}

    static native TemplateInstance process(ProcessView view);

    static native TemplateInstance paper(PaperView view);

    static native TemplateInstance changes(ChangesView view);

    static native TemplateInstance draft(DraftView view);

    static native TemplateInstance part(PartView view);

    static native TemplateInstance components(ComponentsView view);

    static native TemplateInstance calibrations(CalibrationsView view);

    static native TemplateInstance begin(BeginView view);
}
