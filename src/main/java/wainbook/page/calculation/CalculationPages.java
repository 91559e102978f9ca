package wainbook.page.calculation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import wainbook.page.calculation.CalculationView.Described;

/** The pages of calculations. */
@CheckedTemplate(basePath = "page", defaultName = CheckedTemplate.ELEMENT_NAME)
final class CalculationPages {

    private CalculationPages() {}

    /** Calculations that belong together. */
    public record Group(String title, List<Described> calculations) {}

    static native TemplateInstance calculations(List<Group> groups);

    static native TemplateInstance calculation(CalculationView view);
}
