package wainbook.order.specification.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of a specification. */
@CheckedTemplate(basePath = "order", defaultName = CheckedTemplate.ELEMENT_NAME)
final class SpecificationPages {

    private SpecificationPages() {}

    static native TemplateInstance specification(SpecificationView view);

    static native TemplateInstance energy(EnergyView view);
}
