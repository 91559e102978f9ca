package wainbook.quality.containment.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import wainbook.quality.containment.page.view.ContainmentView;
import wainbook.quality.containment.page.view.ContainmentsView;
import wainbook.quality.containment.page.view.DecisionView;
import wainbook.quality.containment.page.view.LetterView;
import wainbook.quality.containment.page.view.NewView;

/** The pages of containments. */
@CheckedTemplate(basePath = "quality", defaultName = CheckedTemplate.ELEMENT_NAME)
final class ContainmentPages {

    private ContainmentPages() {}

    static native TemplateInstance containments(ContainmentsView list);

    static native TemplateInstance containment(ContainmentView view);

    static native TemplateInstance vehicle(DecisionView view);

    static native TemplateInstance letter(LetterView letter);

    static native TemplateInstance open(NewView view);
}
