package wainbook.line.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.forecast.Away.WorkingMinutes;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.WorkOrder;
import wainbook.station.StationSaying.Result;
import wainbook.station.help.HelpCall;

/**
 * What one vehicle's record says of times: its stays at stages whose gate was looked at, and in working minutes what stopped it and
 * is over. A stay without a working minute was worked off shift and says nothing.
 */
record VehiclePast(List<PastVisit> visits, Map<Stop, List<Double>> stopMinutes) {

    VehiclePast {
        visits = List.copyOf(visits);
        stopMinutes = Map.copyOf(stopMinutes);
    }

    /** @param planned minutes of the sheet of a binding */
    static VehiclePast of(History history, WorkingMinutes minutes, ToIntFunction<Binding> planned) {
        Away away = Away.of(history);
        List<PastVisit> visits = WorkOrder.of(history)
                .map(order -> new Stays(order, away, minutes, planned).read(history))
                .orElse(List.of());
        return new VehiclePast(
                visits,
                Map.of(
                        Stop.HOLD,
                        lengths(away.holds(), minutes),
                        Stop.BAY,
                        lengths(away.bays(), minutes),
                        Stop.NONCONFORMITY,
                        decisions(history, minutes),
                        Stop.HELP,
                        help(history, minutes)));
    }

    private static List<Double> lengths(List<Away.Spell> spells, WorkingMinutes minutes) {
        return spells.stream()
                .map(spell -> (double) minutes.between(spell.from(), spell.to()))
                .toList();
    }

    List<Double> minutes(Stop stop) {
        return stopMinutes.getOrDefault(stop, List.of());
    }

    private static List<Double> decisions(History history, WorkingMinutes minutes) {
        return Nonconformities.of(history).all().stream()
                .filter(known -> !known.awaitsDisposition())
                .map(known -> (double) minutes.between(known.since(), at(history, known.disposedAt())))
                .toList();
    }

    private static Instant at(History history, long number) {
        return history.entries().get((int) number - 1).moment().at();
    }

    private static List<Double> help(History history, WorkingMinutes minutes) {
        return HelpCall.of(history).stream()
                .filter(call -> call.said().workStands() && !call.isOpen())
                .map(call -> (double) minutes.between(
                        call.since(), call.resolved().orElseThrow().at()))
                .toList();
    }

    /** Goes through the record once; of a stage passed again only the first stay counts. */
    private record Stays(
            WorkOrder order,
            Away away,
            WorkingMinutes minutes,
            ToIntFunction<Binding> planned,
            Map<String, WorkingMinutes> there,
            Map<String, Instant> arrived,
            Map<String, Instant> evidence,
            Map<String, Instant> refused,
            Map<String, PastVisit> visits) {

        Stays(WorkOrder order, Away away, WorkingMinutes minutes, ToIntFunction<Binding> planned) {
            this(
                    order,
                    away,
                    minutes,
                    planned,
                    new HashMap<>(),
                    new HashMap<>(),
                    new HashMap<>(),
                    new HashMap<>(),
                    new LinkedHashMap<>());
        }

        List<PastVisit> read(History history) {
            for (Entry entry : history.entries()) {
                Instant at = entry.moment().at();
                if (entry.saying() instanceof Moved moved) {
                    moved.to()
                            .stage()
                            .ifPresent(stage -> arrived(stage, moved.to().place(), at));
                } else if (entry.saying() instanceof Result result) {
                    evidence.put(result.about().stage(), at);
                } else if (entry.saying() instanceof Refused said) {
                    if (looked(said.stage(), at, true)) {
                        refused.put(said.stage(), at);
                    }
                } else if (entry.saying() instanceof SignedOff said && !looked(said.stage(), at, false)) {
                    signedAfterAll(said.stage());
                }
            }
            return new ArrayList<>(visits.values());
        }

        private void arrived(String stage, String place, Instant at) {
            if (arrived.putIfAbsent(stage, at) == null) {
                there.put(stage, minutes.at(place));
            }
        }

        /** Whether the gate is looked at for the first time. */
        private boolean looked(String stage, Instant at, boolean refusal) {
            Instant from = arrived.get(stage);
            Instant done = evidence.get(stage);
            Binding binding = order.bindings().get(stage);
            if (visits.containsKey(stage) || from == null || done == null || binding == null) {
                return false;
            }
            double work = away.present(from, done, there.get(stage));
            int sheet = planned.applyAsInt(binding);
            if (work > 0 && sheet > 0) {
                visits.put(
                        stage,
                        new PastVisit(
                                order.number(),
                                order.ordered().vehicleKind(),
                                stage,
                                work,
                                sheet,
                                away.present(done, at, there.get(stage)),
                                refusal,
                                OptionalDouble.empty()));
            }
            return visits.containsKey(stage);
        }

        private void signedAfterAll(String stage) {
            Instant from = refused.remove(stage);
            if (from != null && evidence.get(stage).isAfter(from)) {
                double again = away.present(from, evidence.get(stage), there.get(stage));
                visits.computeIfPresent(
                        stage,
                        (key, visit) -> new PastVisit(
                                visit.order(),
                                visit.kind(),
                                stage,
                                visit.workMinutes(),
                                visit.plannedMinutes(),
                                visit.signatureMinutes(),
                                true,
                                OptionalDouble.of(again)));
            }
        }
    }
}
