package wainbook.isolation.register;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages of the register. */
@CheckedTemplate(basePath = "isolation", defaultName = CheckedTemplate.ELEMENT_NAME)
final class RegisterPages {

    private RegisterPages() {}

    static native TemplateInstance locks(RegisterLook look);

    static native TemplateInstance labels(List<Label> labels);
}
