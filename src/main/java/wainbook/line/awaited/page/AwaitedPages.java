package wainbook.line.awaited.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class AwaitedPages {

    private AwaitedPages() {}

    static native TemplateInstance awaited(AwaitedView view);
}
