package wainbook.handover.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import wainbook.page.Filled;

/** The pages of this room. */
@CheckedTemplate(basePath = "handover", defaultName = CheckedTemplate.ELEMENT_NAME)
final class HandoverPages {

    private HandoverPages() {}

    static native TemplateInstance promises(Filled filled, PromisesView view);

    static native TemplateInstance vehicles(HandoverList list);

    static native TemplateInstance handover(Filled filled, HandoverView view);

    static native TemplateInstance anotherMarket(AnotherMarket asked);

    static native TemplateInstance document(Filled filled, DocumentForm asked);
}
