package wainbook.gate.past;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.DonorRejected;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.WorkOrder.Phase;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Voided;
import wainbook.station.help.HelpCall;

/** Goes through a vehicle's record once. */
final class WayReading {

    private record Placed(Place at, Phase phase, Instant from) {}

    private final History history;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private final Map<Integer, HoldSpell> holds = new LinkedHashMap<>();
    private final Map<String, Instant> evidence = new HashMap<>();
    private final Map<String, Instant> settled = new HashMap<>();
    private final Map<UUID, String> stageOfResult = new HashMap<>();
    /** Of nonconformities that are about an item: they are in the evidence. */
    private final Map<Integer, String> stageOfItems = new HashMap<>();

    private Optional<Ordered> ordered = Optional.empty();
    private boolean cameBack;
    private Optional<Instant> decided = Optional.empty();
    private Optional<Instant> gone = Optional.empty();

    WayReading(History history) {
        this.history = history;
    }

    Optional<VehicleWay> read() {
        history.entries().forEach(this::take);
        List<HelpCall> calls = HelpCall.of(history);
        return ordered.map(said -> new VehicleWay(
                history.subject().code(),
                said,
                cameBack,
                stays(said, calls),
                answers,
                List.copyOf(holds.values()),
                calls));
    }

    private void take(Entry entry) {
        Instant at = entry.moment().at();
        if (entry.saying() instanceof Ordered said) {
            ordered = Optional.of(said);
        } else if (entry.saying() instanceof Returned) {
            cameBack = true;
        } else if (entry.saying() instanceof Result said) {
            stageOfResult.put(entry.id(), said.about().stage());
            evidence.put(said.about().stage(), at);
            settled(said.about().stage(), at);
        } else if (entry.saying() instanceof Voided said && stageOfResult.containsKey(said.entry())) {
            changed(stageOfResult.get(said.entry()), at);
        } else if (entry.saying() instanceof CarriedOver said) {
            settled(said.about().stage(), at);
        } else if (entry.saying() instanceof ReSequenced said) {
            settled(said.about().stage(), at);
        } else if (entry.saying() instanceof HandedOn said) {
            settled(said.about().stage(), at);
        } else if (entry.saying() instanceof NonconformityOpened said) {
            said.item().ifPresent(item -> {
                stageOfItems.put(said.nonconformity(), said.stage());
                changed(said.stage(), at);
            });
        } else if (entry.saying() instanceof Disposed said) {
            decided = Optional.of(at);
            Optional.ofNullable(stageOfItems.get(said.nonconformity())).ifPresent(stage -> changed(stage, at));
        } else if (entry.saying() instanceof SignedOff said) {
            answered(said.stage(), at, true);
        } else if (entry.saying() instanceof Refused said) {
            answered(said.stage(), at, false);
        } else if (entry.saying() instanceof Held said) {
            holds.put(said.hold(), new HoldSpell(said.hold(), said.kindOfHold(), said.stops(), at, Optional.empty()));
        } else if (entry.saying() instanceof HoldReleased said) {
            holds.computeIfPresent(said.hold(), (number, hold) -> hold.released(at));
        } else {
            place(entry, at);
        }
    }

    private void place(Entry entry, Instant at) {
        if (entry.saying() instanceof DonorReceived said) {
            placed.add(new Placed(said.at(), Phase.DONOR_RECEIVED, at));
        } else if (entry.saying() instanceof DonorAccepted said) {
            placed.add(new Placed(said.to(), Phase.DONOR_ACCEPTED, at));
        } else if (entry.saying() instanceof Moved said) {
            placed.add(new Placed(said.to(), said.direction().leadsTo(), at));
        } else if (entry.saying() instanceof DonorRejected || entry.saying() instanceof HandedOver) {
            gone = Optional.of(at);
        }
    }

    private void settled(String stage, Instant at) {
        settled.put(stage, at);
        changed(stage, at);
    }

    private void changed(String stage, Instant at) {
        for (int i = answers.size() - 1; i >= 0; i--) {
            if (answers.get(i).stage().equals(stage)) {
                answers.set(i, answers.get(i).changed(at));
                return;
            }
        }
    }

    private void answered(String stage, Instant at, boolean signed) {
        answers.add(new Answer(
                stage,
                at,
                signed,
                Optional.ofNullable(evidence.get(stage)),
                Stream.concat(Optional.ofNullable(settled.get(stage)).stream(), decided.stream())
                        .max(Instant::compareTo),
                Optional.empty()));
    }

    private List<Stay> stays(Ordered said, List<HelpCall> calls) {
        var stays = new ArrayList<Stay>();
        for (int i = 0; i < placed.size(); i++) {
            Optional<Instant> left =
                    i + 1 < placed.size() ? Optional.of(placed.get(i + 1).from()) : gone;
            stays.add(stay(said, placed.get(i), left, calls));
        }
        return stays;
    }

    private Stay stay(Ordered said, Placed one, Optional<Instant> left, List<HelpCall> calls) {
        Instant until = left.orElse(Instant.MAX);
        List<Answer> here = answers.stream()
                .filter(answer -> one.at().stage().equals(Optional.of(answer.stage())))
                .filter(answer ->
                        !answer.at().isBefore(one.from()) && !answer.at().isAfter(until))
                .toList();
        return new Stay(
                history.subject().code(),
                said.vehicleKind(),
                one.at().stage(),
                one.at().place(),
                one.phase(),
                one.from(),
                left,
                here.stream().findFirst().flatMap(Answer::evidence),
                here,
                holds.values().stream()
                        .filter(hold -> hold.from().isBefore(until)
                                && hold.to().map(one.from()::isBefore).orElse(true))
                        .toList(),
                calls.stream()
                        .filter(call -> call.said().workStands()
                                && call.said()
                                        .place()
                                        .equals(Optional.of(one.at().place())))
                        .filter(call -> !call.since().isBefore(one.from())
                                && !call.since().isAfter(until))
                        .toList());
    }
}
