package wainbook.isolation.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages of this room. */
@CheckedTemplate(basePath = "isolation", defaultName = CheckedTemplate.ELEMENT_NAME)
final class IsolationPages {

    private IsolationPages() {}

    static native TemplateInstance isolation(IsolationView view);

    static native TemplateInstance vehicles(List<IsolationLook.Standing> vehicles);
}
