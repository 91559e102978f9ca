package wainbook.trace.campaign.letter;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** A letter's text. It is XHTML, since it is printed too. */
@CheckedTemplate(basePath = "campaign", defaultName = CheckedTemplate.ELEMENT_NAME)
final class LetterSheets {

    private LetterSheets() {}

    static native TemplateInstance sheet(Letter letter, boolean printed);
}
