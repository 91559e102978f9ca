package wainbook.matter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import wainbook.matter.OpenMatters.OpenMatter;
import wainbook.page.Filled;
import wainbook.page.Form;

/** The pages of this room. */
@CheckedTemplate(basePath = "matter", defaultName = CheckedTemplate.ELEMENT_NAME)
final class MatterPages {

    private MatterPages() {}

    static native TemplateInstance matters(List<OpenMatter> matters, Form form, String csv);

    static native TemplateInstance report(Filled filled, String order);

    static native TemplateInstance disposition(Filled filled, String order, Nonconformity open, long seen);
}
