package wainbook.book.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.book.page.FromFormer.Line;
import wainbook.handover.HandoverLook;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.page.SnagLine;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.returning.FormerRecords;
import wainbook.page.Words;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Finds what is open still in the records of a vehicle’s former orders. */
@ApplicationScoped
class FormerMatters {

    private final FormerRecords former;
    private final HandoverLook handover;
    private final Campaigns campaigns;
    private final WorksDay day;

    FormerMatters(FormerRecords former, HandoverLook handover, Campaigns campaigns, WorksDay day) {
        this.former = former;
        this.handover = handover;
        this.campaigns = campaigns;
        this.day = day;
    }

    /** @param holds that stand by rule on this order */
    List<FromFormer> of(WorkOrder order, List<HoldByRule> holds, Instant now) {
        Set<String> here = Stream.concat(
                        campaigns.about(order.number()).stream().map(Campaign::path),
                        holds.stream().map(HoldByRule::path))
                .collect(Collectors.toSet());
        return former.of(order).stream()
                .map(history -> new FromFormer(
                        history.subject().code(),
                        Stream.of(
                                        holds(history.subject().code(), holds),
                                        snags(history, day.of(now)),
                                        campaigns(history.subject().code(), here),
                                        documents(history, now).stream())
                                .flatMap(lines -> lines)
                                .toList()))
                .filter(open -> !open.lines().isEmpty())
                .toList();
    }

    private static Stream<Line> holds(String order, List<HoldByRule> holds) {
        return holds.stream()
                .filter(hold -> hold.former().filter(order::equals).isPresent())
                .map(hold -> new Line(
                        hold.title(),
                        hold.reason(),
                        hold.since(),
                        Words.of("book.formerHolds", hold.stopsInWords()),
                        "hold",
                        "danger",
                        hold.rolesInWords(),
                        hold.path()));
    }

    private static Stream<Line> snags(History history, LocalDate today) {
        return HandoverRecord.of(history).openSnags().stream()
                .map(piece -> SnagLine.of(piece, today))
                .map(snag -> new Line(
                        Words.of("handover.recordSnag", snag.said().snag()),
                        snag.said().defect() + ", " + snag.said().place(),
                        snag.piece().entry().moment().at(),
                        Words.of("handover.recordSnagOpen", snag.due()),
                        snag.late() ? "alert" : "clock",
                        snag.late() ? "danger" : "warn",
                        snag.owner(),
                        "/handover/" + history.subject().code() + "/record#snag-"
                                + snag.said().snag()));
    }

    /** @param here where matters lead that the page of the new order shows anyway */
    private Stream<Line> campaigns(String order, Set<String> here) {
        return campaigns.about(order).stream()
                .filter(campaign -> !here.contains(campaign.path()))
                .flatMap(campaign -> campaign.vehicle(order).stream()
                        .map(one -> campaign(campaign, one))
                        .filter(line -> !here.contains(line.path())));
    }

    private Line campaign(Campaign campaign, InCampaign one) {
        return new Line(
                Words.of("campaign.onVehicle", campaign.number()),
                campaign.said().title(),
                campaign.opened().moment().at(),
                campaigns.progress(one).standing().word(),
                "alert",
                "warn",
                Words.of("works." + Role.qualityEngineer),
                campaign.path() + "/vehicles/" + one.order());
    }

    private Optional<Line> documents(History history, Instant now) {
        int following = WorkOrder.of(history)
                .flatMap(order -> handover.documents(history, order, now))
                .map(DocumentSet::following)
                .map(List::size)
                .orElse(0);
        return Optional.of(following)
                .filter(some -> some > 0)
                .map(some -> new Line(
                        Words.of("book.toFollow", some),
                        "",
                        history.saying(HandedOver.class)
                                .findFirst()
                                .map(entry -> entry.moment().at())
                                .orElse(now),
                        Words.of("book.formerBarsNothing"),
                        "document",
                        "warn",
                        Words.of("works." + Role.handoverClerk),
                        "/handover/" + history.subject().code()));
    }
}
