package wainbook.trace.campaign;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.works.Role;

/** Campaigns that are open, each with whoever opened it. A vehicle in the works has its hold besides. */
@ApplicationScoped
class CampaignMatters implements Matters {

    private final Campaigns campaigns;

    CampaignMatters(Campaigns campaigns) {
        this.campaigns = campaigns;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return campaigns.open().stream().map(this::matter).toList();
    }

    private OpenMatter matter(Campaign campaign) {
        List<Standing> standings = campaign.vehicles().values().stream()
                .map(one -> campaigns.progress(one).standing())
                .filter(standing -> standing != Standing.TAKEN_OUT)
                .toList();
        return new OpenMatter(
                Sort.CAMPAIGN,
                "",
                Words.of(
                        "campaign.matterTitle",
                        campaign.number(),
                        campaign.said().title()),
                Optional.empty(),
                Words.of(
                        "campaign.matterWhat",
                        standings.stream().filter(Standing::open).count(),
                        standings.size()),
                campaign.opened().moment().at(),
                List.of(Owner.person(campaign.opened().moment().who()), Owner.of(Role.QUALITY_ENGINEER)),
                Due.open(),
                "",
                campaign.path());
    }
}
