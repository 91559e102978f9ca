package wainbook.line.milestone.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of milestones. */
@CheckedTemplate(basePath = "line", defaultName = CheckedTemplate.ELEMENT_NAME)
final class MilestonePages {

    private MilestonePages() {}

    static native TemplateInstance milestones(MilestonesView view);

    static native TemplateInstance webhooks(WebhooksView view);
}
