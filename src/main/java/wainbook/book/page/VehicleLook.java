package wainbook.book.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.book.VehicleRecord;
import wainbook.book.page.Vehicle.Awaited;
import wainbook.book.page.Vehicle.Deferred;
import wainbook.book.page.Vehicle.Fitted;
import wainbook.book.page.Vehicle.GateLine;
import wainbook.book.telling.Names;
import wainbook.book.telling.ReleasedNames;
import wainbook.gate.Gate;
import wainbook.handover.HandoverLook;
import wainbook.handover.promise.PromiseKept;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.page.SnagLine;
import wainbook.isolation.page.InWords;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.page.LineLook;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.FactQuestion;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldInWords;
import wainbook.order.hold.StandingHolds;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.permit.page.PermitLook;
import wainbook.process.Releases;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Voided;
import wainbook.station.help.HelpCall;
import wainbook.station.serial.BroughtSaying.PartBrought;
import wainbook.station.serial.StandingSerials;
import wainbook.station.work.Workplace;
import wainbook.trace.campaign.Campaigns;
import wainbook.works.shift.WorksDay;

/** Brings together what the page of one vehicle shows. */
@ApplicationScoped
public class VehicleLook {

    private final Releases releases;
    private final Workplace workplace;
    private final LineLook line;
    private final HandoverLook handover;
    private final Campaigns campaigns;
    private final WorksDay day;
    private final StandingHolds holds;
    private final FormerMatters former;

    VehicleLook(
            Releases releases,
            Workplace workplace,
            LineLook line,
            HandoverLook handover,
            Campaigns campaigns,
            WorksDay day,
            StandingHolds holds,
            FormerMatters former) {
        this.releases = releases;
        this.workplace = workplace;
        this.line = line;
        this.handover = handover;
        this.campaigns = campaigns;
        this.day = day;
        this.holds = holds;
        this.former = former;
    }

    Vehicle of(History history, WorkOrder order, Moment moment, String kind, Vehicle.Doors doors) {
        return of(history, order, moment, kind, doors, ReleasedNames.withPeople(releases, day.zone()));
    }

    /** The same with people, items and places called as the reader needs them. */
    public Vehicle of(History history, WorkOrder order, Moment moment, String kind, Vehicle.Doors doors, Names names) {
        Instant now = moment.at();
        List<HoldByRule> byRule = holds.on(order);
        return new Vehicle(
                order,
                line.bar(history, order, now),
                line.of(history, order, now),
                InWords.of(history, now, moment.who(), new Formats(day.zone())),
                new Vehicle.Matters(
                        Nonconformities.of(history).awaitingDisposition(),
                        HoldInWords.inForce(history),
                        deferred(history, order, names),
                        given(history, names).isPresent() ? List.of() : awaited(history, names, day.of(now)),
                        HelpCall.open(history),
                        VehicleDoubts.of(history).open(),
                        HandoverRecord.of(history).openSnags().stream()
                                .map(snag -> SnagLine.of(snag, day.of(now)))
                                .toList(),
                        campaigns.about(order.number()),
                        byRule,
                        former.of(order, byRule, now)),
                order.facts().entrySet().stream()
                        .map(fact -> FactQuestion.of(fact.getKey(), fact.getValue()))
                        .sorted(Comparator.comparing(FactQuestion::label))
                        .toList(),
                missing(history, order),
                fitted(history),
                gates(history, order, names),
                InsulationTrend.of(history, names),
                handover.documents(history, order, now),
                promises(history, order, now),
                VehicleRecord.of(history, names, kind),
                given(history, names),
                HandoverRecord.of(history)
                        .warranty()
                        .map(Piece::said)
                        .map(said -> new Vehicle.Warranty(Formats.date(said.from()), said.odometerKm(), said.covers())),
                PermitLook.open(history, now, day.zone()),
                doors);
    }

    private List<PromiseKept> promises(History history, WorkOrder order, Instant now) {
        return PromiseKept.of(
                history,
                order.gates().stream().flatMap(stage -> workplace.record(history, order, stage).stream()),
                handover.documents(history, order, now));
    }

    private static Optional<String> given(History history, Names names) {
        return history.saying(HandedOver.class)
                .findFirst()
                .map(entry -> Words.of(
                        "book.givenTo",
                        ((HandedOver) entry.saying()).receivedBy(),
                        names.time(entry.moment().at())));
    }

    private List<GateLine> gates(History history, WorkOrder order, Names names) {
        return order.gates().stream()
                .map(stage -> {
                    Optional<Gate> gate =
                            workplace.record(history, order, stage).map(record -> Gate.of(history, record));
                    return new GateLine(
                            stage,
                            names.stage(stage),
                            gate,
                            gate.flatMap(known -> known.refused().or(known::signed))
                                    .map(entry -> names.person(entry.moment().who())));
                })
                .toList();
    }

    /** What must be known before it is clear which items of the present stage apply. */
    private List<FactQuestion> missing(History history, WorkOrder order) {
        return order.stage().flatMap(stage -> workplace.record(history, order, stage)).stream()
                .map(StageRecord::items)
                .flatMap(List::stream)
                .flatMap(item -> item.missingFacts().stream())
                .distinct()
                .map(fact -> FactQuestion.of(fact, ""))
                .toList();
    }

    private List<Deferred> deferred(History history, WorkOrder order, Names names) {
        return workplace.deferred(history, order).stream()
                .map(work -> new Deferred(
                        names.item(work.about()),
                        names.stage(work.toStage()),
                        work.owner()
                                .map(owner -> Words.of("book.owner", names.person(owner)))
                                .orElseGet(() -> work.bars().stream()
                                        .map(bar -> Words.of("book.bar." + bar.name()))
                                        .collect(Collectors.joining(", "))),
                        work.entry().number()))
                .toList();
    }

    private static List<Awaited> awaited(History history, Names names, LocalDate today) {
        return AwaitedParts.of(history).open().stream()
                .map(part -> new Awaited(part, names.stage(part.stage()), part.sentence(today), part.late(today)))
                .toList();
    }

    private static List<Fitted> fitted(History history) {
        Set<UUID> voided = history.saying(Voided.class)
                .map(entry -> ((Voided) entry.saying()).entry())
                .collect(Collectors.toSet());
        Stream<Fitted> serials = StandingSerials.of(history).byLine().values().stream()
                .flatMap(entry -> StandingSerials.serial(entry).stream()
                        .map(serial -> new Fitted(
                                serial.part(),
                                serial.number(),
                                true,
                                entry.saying() instanceof PartBrought,
                                entry.number())));
        Stream<Fitted> lots = history.saying(LotUsed.class)
                .filter(entry -> !voided.contains(entry.id()))
                .map(VehicleLook::lot);
        return Stream.concat(serials, lots)
                .sorted(Comparator.comparingLong(Fitted::entry))
                .toList();
    }

    private static Fitted lot(Entry entry) {
        LotUsed used = (LotUsed) entry.saying();
        return new Fitted(used.part(), used.lot(), false, false, entry.number());
    }
}
