package wainbook.trace.campaign.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.WorkOrder;
import wainbook.order.returning.Returning;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.trace.campaign.About;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignRow;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.trace.campaign.Plate;
import wainbook.trace.campaign.Step;
import wainbook.trace.campaign.act.Adding;
import wainbook.trace.campaign.act.Closing;
import wainbook.trace.campaign.act.OneVehicle;
import wainbook.trace.campaign.act.ReworkOrdering;
import wainbook.trace.campaign.letter.Letters;
import wainbook.works.shift.WorksDay;

/** Brings together what the pages of campaigns show. */
@ApplicationScoped
class CampaignLook {

    private final Ledger ledger;
    private final Campaigns campaigns;
    private final Adding adding;
    private final Closing closing;
    private final OneVehicle vehicles;
    private final Letters letters;
    private final ReworkOrdering reworking;
    private final Returning returning;
    private final WorksDay day;

    CampaignLook(
            Ledger ledger,
            Campaigns campaigns,
            Adding adding,
            Closing closing,
            OneVehicle vehicles,
            Letters letters,
            ReworkOrdering reworking,
            Returning returning,
            WorksDay day) {
        this.ledger = ledger;
        this.campaigns = campaigns;
        this.adding = adding;
        this.closing = closing;
        this.vehicles = vehicles;
        this.letters = letters;
        this.reworking = reworking;
        this.returning = returning;
        this.day = day;
    }

    Campaign known(String number) {
        return campaigns.named(number).orElseThrow(NotFoundException::new);
    }

    List<CampaignLine> all() {
        return ledger.drawing(() -> CampaignRow.all().stream()
                .map(row -> new CampaignLine(
                        row,
                        known(row.number).vehicles().values().stream()
                                .map(one -> campaigns.progress(one).standing())
                                .toList()))
                .toList());
    }

    List<VehicleLine> lines(Campaign campaign) {
        return campaign.vehicles().values().stream()
                .map(one -> line(campaign, one))
                .toList();
    }

    private VehicleLine line(Campaign campaign, InCampaign one) {
        WorkOrder order =
                WorkOrder.of(ledger.history(Subject.workOrder(one.order()))).orElseThrow(NotFoundException::new);
        return new VehicleLine(
                campaign.number(),
                one,
                campaigns.progress(one),
                Plate.of(order).orElse("–"),
                order.phase(),
                campaigns.hold(one).map(Held::hold));
    }

    CampaignView one(
            String number,
            String search,
            String standing,
            int page,
            Filled filled,
            Moment now,
            CampaignView.Doors doors) {
        Campaign campaign = known(number);
        return ledger.drawing(() -> new CampaignView(
                campaign,
                ledger.history(Campaign.subject(number)).number(),
                lines(campaign),
                adding.since(campaign),
                campaigns.unheld(campaign),
                letters.operators(campaign),
                campaign.isOpen() ? closing.rule(campaign, now).against() : List.of(),
                search,
                standing,
                page,
                filled,
                doors));
    }

    VehicleView vehicle(String number, String order, Filled filled, Moment now, CampaignView.Doors doors) {
        Campaign campaign = known(number);
        InCampaign one = campaign.vehicle(order).orElseThrow(NotFoundException::new);
        return ledger.drawing(() -> new VehicleView(
                campaign,
                line(campaign, one),
                ledger.history(Campaign.subject(number)).entries().stream()
                        .filter(entry -> About.orders(entry).contains(order))
                        .toList(),
                new VehicleView.Against(
                        against(Step.ANSWER, campaign, order, now),
                        against(Step.ORDER_REWORK, campaign, order, now),
                        against(Step.SETTLE, campaign, order, now),
                        against(Step.ASK_OUT, campaign, order, now),
                        against(Step.AGREE_OUT, campaign, order, now),
                        against(Step.ADD, campaign, order, now)),
                routes(one),
                reworking.known(order),
                ready(one, filled, now),
                doors));
    }

    /** What is mostly meant stands in the fields already. */
    private Filled ready(InCampaign one, Filled filled, Moment now) {
        return filled.form().typed().isEmpty()
                ? filled.with("rework", one.order() + "-2")
                        .with("operator", one.scope().operator())
                        .with("answeredOn", day.of(now.at()).toString())
                : filled;
    }

    private List<Option> routes(InCampaign one) {
        return campaigns.order(one.order()).stream()
                .flatMap(order -> returning.routes(order).stream())
                .map(route -> new Option(route.code(), route.title()))
                .toList();
    }

    private List<Reason> against(Step step, Campaign campaign, String order, Moment now) {
        return vehicles.against(step, campaign, order, now.who());
    }
}
