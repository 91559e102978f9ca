package wainbook.line.measure.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of measures of the line. */
@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class MeasurePages {

    private MeasurePages() {}

    static native TemplateInstance measures(MeasuresView view);
}
