package wainbook.trace.campaign.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;

/** The pages of campaigns. */
@CheckedTemplate(basePath = "campaign", defaultName = CheckedTemplate.ELEMENT_NAME)
final class CampaignPages {

    private CampaignPages() {}

    static native TemplateInstance campaigns(CampaignList list);

    static native TemplateInstance open(NewView view);

    static native TemplateInstance campaign(CampaignView view);

    static native TemplateInstance vehicle(VehicleView view);

    static native TemplateInstance letter(LetterView view);
}
