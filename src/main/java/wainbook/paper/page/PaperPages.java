package wainbook.paper.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import wainbook.paper.page.sheet.Sheet;

/** The pages of paper. */
@CheckedTemplate(basePath = "paper", defaultName = CheckedTemplate.ELEMENT_NAME)
final class PaperPages {

    private PaperPages() {}

    static native TemplateInstance forms(FormsView view);

    static native TemplateInstance form(FormView view);

    static native TemplateInstance sheets(List<Sheet> sheets);

    static native TemplateInstance transcribe(TranscribeView view);

    static native TemplateInstance compare(CompareView view);
}
