package wainbook.waste.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Option;

/** The pages of this room. */
@CheckedTemplate(basePath = "waste", defaultName = CheckedTemplate.ELEMENT_NAME)
final class WastePages {

    private WastePages() {}

    static native TemplateInstance containers(WasteList list);

    static native TemplateInstance make(Filled filled, List<Option> codes, List<Option> measures);

    static native TemplateInstance container(ContainerView view, boolean works, boolean papers);

    static native TemplateInstance label(ContainerView view);

    static native TemplateInstance collect(ContainerView view, List<Reason> against, String today);

    static native TemplateInstance note(ContainerView view);

    static native TemplateInstance strip(StripView view);

    static native TemplateInstance thing(ThingView view);

    static native TemplateInstance engine(StripView view, List<Reason> against);

    static native TemplateInstance certificate(StripView view);
}
