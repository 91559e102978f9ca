package wainbook.permit.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of permits. */
@CheckedTemplate(basePath = "permit", defaultName = CheckedTemplate.ELEMENT_NAME)
final class PermitPages {

    private PermitPages() {}

    static native TemplateInstance permits(ListView list);

    static native TemplateInstance permit(PermitView view);

    static native TemplateInstance issue(NewView view);
}
