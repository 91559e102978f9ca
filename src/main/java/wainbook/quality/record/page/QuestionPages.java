package wainbook.quality.record.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of questions. */
@CheckedTemplate(basePath = "quality", defaultName = CheckedTemplate.ELEMENT_NAME)
final class QuestionPages {

    private QuestionPages() {}

    static native TemplateInstance questions(QuestionsView view);

    static native TemplateInstance agreement(AgreementView view);
}
