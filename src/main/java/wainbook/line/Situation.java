package wainbook.line;

import java.util.List;
import java.util.Optional;
import wainbook.gate.Gate;
import wainbook.matter.Nonconformity;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.page.Words;

/**
 * What is known of a vehicle at a station, and what state and causes follow from it.
 *
 * @param nonconformities those that await their disposition
 * @param minutes clock time at the station
 * @param ahead the station that the vehicle goes to next and the order that stands there, if every one is taken
 */
record Situation(
        WorkOrder order,
        Optional<Gate> gate,
        List<Nonconformity> nonconformities,
        long minutes,
        double taktMin,
        Optional<Ahead> ahead) {

    /** The vehicle in the way. */
    record Ahead(String station, String order) {}

    StationState state() {
        if (!order.holds().isEmpty()) {
            return StationState.HELD;
        }
        if (signed()) {
            return ahead.isPresent() ? StationState.BLOCKED : overTakt();
        }
        boolean settled =
                gate.map(known -> known.record().unsettled().isEmpty()).orElse(false);
        if (settled && nonconformities.isEmpty() && !refused()) {
            return StationState.AWAITING_SIGN_OFF;
        }
        return overTakt();
    }

    List<Cause> causes() {
        var causes = new java.util.ArrayList<Cause>();
        order.holds().forEach(hold -> causes.add(held(hold)));
        nonconformities.forEach(open -> causes.add(Cause.at(
                vehicle() + "#matters",
                Words.of("line.causeNonconformity", open.number(), open.opened().what()))));
        gate.ifPresent(known -> causes.add(work(known)));
        return causes;
    }

    private Cause held(Held hold) {
        String stops = hold.stops().stream()
                .map(Stops::name)
                .map(name -> Words.of("order.stops." + name))
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        return Cause.at(vehicle() + "#holds", Words.of("line.causeHeld", hold.hold(), stops, hold.reason()));
    }

    private Cause work(Gate known) {
        String stage = known.record().stage();
        String gatePath = "/gates/" + order.number() + "/" + stage;
        int open = known.record().unsettled().size();
        return switch (known.standing()) {
            case SIGNED ->
                ahead.map(other -> Cause.at(
                                "/orders/" + other.order(),
                                Words.of("line.causeBlocked", other.station(), other.order())))
                        .orElseGet(() -> Cause.at(vehicle() + "/move", Words.of("line.causeSigned")));
            case REFUSED -> Cause.at(gatePath, Words.of("line.causeRefused"));
            case CHANGED_SINCE_SIGNED -> Cause.at(gatePath, Words.of("line.causeChanged"));
            case UNSIGNED ->
                open == 0
                        ? Cause.at(gatePath, Words.of("line.causeReady"))
                        : Cause.at(
                                "/station/" + order.number(),
                                Words.of(
                                        "line.causeOpen",
                                        open,
                                        known.record().items().size()));
        };
    }

    private StationState overTakt() {
        return minutes > taktMin ? StationState.OVER_TAKT : StationState.WORKING;
    }

    private boolean signed() {
        return standing(Gate.Standing.SIGNED);
    }

    private boolean refused() {
        return standing(Gate.Standing.REFUSED);
    }

    private boolean standing(Gate.Standing standing) {
        return gate.filter(known -> known.standing() == standing).isPresent();
    }

    private String vehicle() {
        return "/orders/" + order.number();
    }
}
