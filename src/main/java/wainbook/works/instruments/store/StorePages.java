package wainbook.works.instruments.store;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The page of the tool store. */
@CheckedTemplate(basePath = "works", defaultName = CheckedTemplate.ELEMENT_NAME)
final class StorePages {

    private StorePages() {}

    static native TemplateInstance store(StoreView view);
}
