package wainbook.handover.issue.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

@CheckedTemplate(basePath = "handover", defaultName = CheckedTemplate.ELEMENT_NAME)
final class IssuePages {

    private IssuePages() {}

    static native TemplateInstance issues(IssueList list);

    static native TemplateInstance issue(IssueView view);

    static native TemplateInstance texts(TextList list);

    static native TemplateInstance text(TextView view);
}
