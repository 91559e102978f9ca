package wainbook.line.appointment.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class AppointmentPages {

    private AppointmentPages() {}

    static native TemplateInstance appointments(AppointmentView view);
}
