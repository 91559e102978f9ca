package wainbook.order.calibration.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of a calibration. */
@CheckedTemplate(basePath = "order", defaultName = CheckedTemplate.ELEMENT_NAME)
final class CalibrationPages {

    private CalibrationPages() {}

    static native TemplateInstance calibration(CalibrationView view);
}
