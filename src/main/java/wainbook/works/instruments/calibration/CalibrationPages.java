package wainbook.works.instruments.calibration;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages about calibrations. */
@CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
final class CalibrationPages {

    private CalibrationPages() {}

    static native TemplateInstance calibration(CalibrationView view);
}
