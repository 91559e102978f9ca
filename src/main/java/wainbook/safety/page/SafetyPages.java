package wainbook.safety.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import wainbook.safety.page.view.EnteringView;
import wainbook.safety.page.view.InductionView;
import wainbook.safety.page.view.MissView;
import wainbook.safety.page.view.SafetyView;
import wainbook.safety.page.view.StopView;
import wainbook.safety.page.view.VisitorsView;

/** The pages of safety. */
@CheckedTemplate(basePath = "safety", defaultName = CheckedTemplate.ELEMENT_NAME)
final class SafetyPages {

    private SafetyPages() {}

    static native TemplateInstance safety(SafetyView view);

    static native TemplateInstance miss(MissView view);

    static native TemplateInstance stop(StopView view);

    static native TemplateInstance visitors(VisitorsView view);

    static native TemplateInstance induction(InductionView view);

    static native TemplateInstance entering(EnteringView view);
}
