package wainbook.matter.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import wainbook.matter.nonconformity.Nonconformity;
import wainbook.page.Filled;

/** The pages of this room. */
@CheckedTemplate(basePath = "matter", defaultName = CheckedTemplate.ELEMENT_NAME)
final class MatterPages {

    private MatterPages() {}

    static native TemplateInstance matters(MatterList list);

    static native TemplateInstance report(Filled filled, String order);

    static native TemplateInstance disposition(Filled filled, String order, Nonconformity open, long seen);
}
