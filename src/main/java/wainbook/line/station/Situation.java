package wainbook.line.station;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.flow.status.Signs;
import wainbook.gate.Gate;
import wainbook.ledger.History;
import wainbook.matter.nonconformity.Nonconformity;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldInWords;
import wainbook.station.StageRecord;
import wainbook.station.help.HelpCall;

/**
 * What is known of a vehicle at a station.
 *
 * @param nonconformities those that await their disposition
 * @param holds in force on its record, oldest first
 * @param heldByRule holds that stand by what is open elsewhere, oldest first
 * @param calls for help that are not settled, oldest first
 * @param minutes working minutes at the station
 */
public record Situation(
        History history,
        WorkOrder order,
        Optional<Gate> gate,
        List<Nonconformity> nonconformities,
        List<HoldInWords> holds,
        List<HoldByRule> heldByRule,
        List<HelpCall> calls,
        long minutes,
        double allowedMin) {

    public Situation {
        nonconformities = List.copyOf(nonconformities);
        holds = List.copyOf(holds);
        heldByRule = List.copyOf(heldByRule);
        calls = List.copyOf(calls);
    }

    public String station() {
        return order.at().map(Place::place).orElse("");
    }

    /** On shift: a shift is the station's, and not the vehicle's. */
    public Signs signs() {
        boolean settled =
                gate.map(known -> known.record().unsettled().isEmpty()).orElse(false);
        return new Signs(
                true,
                down().isPresent(),
                true,
                heldSince().isPresent(),
                settled && nonconformities.isEmpty() && !standing(Gate.Standing.REFUSED),
                standing(Gate.Standing.SIGNED),
                minutes > allowedMin);
    }

    /** What it would be if the shift ran. */
    public StationState state() {
        return StationState.of(signs().doing());
    }

    /** Since when the state is as it is, as far as the record shows. */
    public Instant since() {
        Instant came = order.since().orElse(Instant.EPOCH);
        return switch (state()) {
            case DOWN -> down().map(HelpCall::since).orElse(came);
            case HELD -> heldSince().orElse(came);
            case BLOCKED ->
                gate.flatMap(Gate::signed).map(entry -> entry.moment().at()).orElse(came);
            case AWAITING_SIGN_OFF -> lastEvidence().orElse(came);
            case WORKING, OVER_TAKT, STARVED, OFF_SHIFT -> came;
        };
    }

    private Optional<Instant> heldSince() {
        return Stream.concat(
                        holds.stream().map(HoldInWords::since),
                        heldByRule.stream().map(HoldByRule::since))
                .min(Comparator.naturalOrder());
    }

    Optional<HelpCall> down() {
        return calls.stream().filter(call -> call.stops(station())).findFirst();
    }

    public Optional<StageRecord> record() {
        return gate.map(Gate::record);
    }

    public Optional<Instant> lastEvidence() {
        return record().stream()
                .flatMap(record -> record.items().stream())
                .flatMap(item -> item.entries().stream())
                .map(entry -> entry.moment().at())
                .max(Comparator.naturalOrder());
    }

    private boolean standing(Gate.Standing standing) {
        return gate.filter(known -> known.standing() == standing).isPresent();
    }
}
