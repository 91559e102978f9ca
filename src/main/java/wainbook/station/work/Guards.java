package wainbook.station.work;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.tool.ToolNeeded;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;

/**
 * What must hold for an entry to count. Rules of the vehicle stop the entry; rules of person, instrument and order make
 * it an observation that can pass nothing.
 *
 * @param electrical the reasons that the vehicle's electrical condition gives against this item
 * @param heldByRule what holds that stand by rule give against work
 */
public record Guards(
        WorkOrder order,
        StageRecord record,
        ItemState state,
        Person person,
        Optional<Instrument> instrument,
        Optional<Joint> joint,
        List<Reason> electrical,
        List<Reason> heldByRule,
        Instant at,
        LocalDate today) {

    private static final String AT_STATION = "/station/";

    /** What stops any entry. */
    public List<Reason> vehicle() {
        var against = new ArrayList<Reason>();
        order.holdsThatStop(Stops.WORK)
                .forEach(hold -> against.add(
                        Reason.of("station.held", Reason.WORKS_RULE, order.number(), hold.hold(), hold.reason())
                                .liftedAt("/orders/" + order.number() + "#holds")));
        against.addAll(heldByRule);
        switch (state.status()) {
            case NOT_APPLICABLE -> against.add(Reason.of("station.notApplicable", Reason.WORKS_RULE, state.key()));
            case FACTS_MISSING ->
                against.add(Reason.of(
                                "station.factsMissing",
                                Reason.WORKS_RULE,
                                state.key(),
                                String.join(", ", state.missingFacts()))
                        .liftedAt("/orders/" + order.number() + "#facts"));
            case PASSED, CONCEDED -> against.add(Reason.of("station.passedAlready", Reason.WORKS_RULE, state.key()));
            case NONCONFORMING ->
                against.add(Reason.of("station.nonconforming", Reason.WORKS_RULE, state.key())
                        .liftedAt("/orders/" + order.number() + "#matters"));
            case CARRIED_OVER, RE_SEQUENCED, HANDED_ON ->
                against.add(Reason.of("station.notHere", Reason.WORKS_RULE, state.key()));
            case OPEN, WAITING, FAILED, STALE -> {}
        }
        state.takenBy()
                .filter(taken -> !taken.who().equals(person.number()))
                .filter(taken -> taken.stands(at))
                .ifPresent(
                        taken -> against.add(Reason.of("station.taken", Reason.WORKS_RULE, state.key(), taken.who())));
        return against;
    }

    /** What makes an entry one that can pass nothing. */
    public List<Reason> counting() {
        var against = new ArrayList<Reason>();
        for (String before : state.item().after()) {
            boolean settled =
                    record.item(before).map(other -> other.status().settled()).orElse(true);
            if (!settled) {
                against.add(Reason.of("station.notInOrder", Reason.WORKS_RULE, state.key(), before)
                        .liftedAt(AT_STATION + order.number() + "?item=" + before));
            }
        }
        against.addAll(competence());
        ToolNeeded.of(state.item().asks(), joint)
                .ifPresent(needed ->
                        against.addAll(InstrumentRule.against(instrument, needed.kind(), needed.values(), today)));
        unknownUncertainty().ifPresent(against::add);
        against.addAll(electrical);
        return against;
    }

    /** Where a class keeps clear of its limits, a tool that does not say by how much it errs can pass nothing. */
    private Optional<Reason> unknownUncertainty() {
        boolean torque =
                state.item().asks() instanceof Ask.Tighten || state.item().asks() instanceof Ask.Recheck;
        boolean guarded = torque
                && joint.filter(known -> known.jointClass().decisionFactor().signum() > 0)
                        .isPresent();
        boolean determined = state.item().asks() instanceof Ask.Determine ask
                && ask.instrumentKind().isPresent();
        return instrument
                .filter(tool ->
                        (guarded || determined) && tool.accuracyPercent().isEmpty())
                .map(tool -> Reason.of("station.toolUncertaintyUnknown", Reason.WORKS_RULE, tool.code()));
    }

    /** What the person lacks. */
    public List<Reason> competence() {
        return state
                .item()
                .competence()
                .flatMap(competence -> CompetenceRule.against(person, competence, today))
                .stream()
                .toList();
    }
}
