package wainbook.gate;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;

/** The pages of this room. */
@CheckedTemplate(basePath = "gate", defaultName = CheckedTemplate.ELEMENT_NAME)
final class GatePages {

    private GatePages() {}

    static native TemplateInstance gate(GateView view);

    static native TemplateInstance queue(List<GateQueue.Waiting> queue);
}
