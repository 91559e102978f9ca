package wainbook.line.stringline.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.Optional;
import wainbook.line.stringline.StringLine;

@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class StringLinePages {

    private StringLinePages() {}

    static native TemplateInstance strings(Optional<StringLine> picture);

    /** The same for those who look without a script. */
    static native TemplateInstance stringPage(String title, Optional<StringLine> picture);
}
