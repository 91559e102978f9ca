package wainbook.line.forecast.past;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import wainbook.gate.past.Answer;
import wainbook.gate.past.VehicleWay;
import wainbook.ledger.History;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder;
import wainbook.station.help.HelpCall;

/**
 * What one vehicle's record says of times: its stays at stages whose gate was looked at, and in working minutes what stopped it and
 * is over. A stay without a working minute was worked off shift and says nothing.
 */
public record VehiclePast(List<PastVisit> visits, Map<Stop, List<Double>> stopMinutes) {

    public VehiclePast {
        visits = List.copyOf(visits);
        stopMinutes = Map.copyOf(stopMinutes);
    }

    /** @param planned minutes of the sheet of a binding */
    public static VehiclePast of(History history, WorkingMinutes minutes, ToIntFunction<Binding> planned) {
        Map<String, Binding> bindings =
                WorkOrder.of(history).map(WorkOrder::bindings).orElse(Map.of());
        return VehicleWay.of(history)
                .map(way -> of(way, Idle.of(history), bindings, minutes, planned, decisions(history, minutes)))
                .orElse(new VehiclePast(List.of(), Map.of()));
    }

    private static VehiclePast of(
            VehicleWay way,
            Idle idle,
            Map<String, Binding> bindings,
            WorkingMinutes minutes,
            ToIntFunction<Binding> planned,
            List<Double> decisions) {
        Away away = Away.of(way);
        return new VehiclePast(
                new Stays(way, idle, bindings, away, minutes, planned, new HashMap<>(), new LinkedHashMap<>()).read(),
                Map.of(
                        Stop.HOLD,
                        lengths(away.holds(), minutes),
                        Stop.BAY,
                        lengths(away.bays(), minutes),
                        Stop.NONCONFORMITY,
                        decisions,
                        Stop.HELP,
                        help(way.calls(), minutes)));
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

    private static List<Double> help(List<HelpCall> calls, WorkingMinutes minutes) {
        return calls.stream()
                .filter(call -> call.said().workStands() && !call.isOpen())
                .map(call -> (double) minutes.between(
                        call.since(), call.resolved().orElseThrow().at()))
                .toList();
    }

    /** Goes through the answers of its gates; of a stage passed again only the first stay counts. */
    private record Stays(
            VehicleWay way,
            Idle idle,
            Map<String, Binding> bindings,
            Away away,
            WorkingMinutes minutes,
            ToIntFunction<Binding> planned,
            Map<String, Instant> refused,
            Map<String, PastVisit> visits) {

        List<PastVisit> read() {
            for (Answer answer : way.answers()) {
                boolean first = looked(answer);
                if (first && !answer.signed()) {
                    refused.put(answer.stage(), answer.at());
                } else if (!first && answer.signed()) {
                    signedAfterAll(answer);
                }
            }
            return new ArrayList<>(visits.values());
        }

        /** Those of the station where it first stood at the stage. */
        private WorkingMinutes there(String stage) {
            return way.onLine()
                    .filter(stay -> stay.stage().equals(Optional.of(stage)))
                    .findFirst()
                    .map(stay -> minutes.at(stay.place()))
                    .orElse(minutes);
        }

        /** Whether the gate is looked at for the first time. */
        private boolean looked(Answer answer) {
            String stage = answer.stage();
            Optional<Instant> from = way.cameTo(stage).filter(came -> !came.isAfter(answer.at()));
            Binding binding = bindings.get(stage);
            if (visits.containsKey(stage) || from.isEmpty() || answer.evidence().isEmpty() || binding == null) {
                return false;
            }
            Instant done = answer.evidence().get();
            double work = present(stage, from.get(), done);
            int sheet = planned.applyAsInt(binding);
            if (work > 0 && sheet > 0) {
                visits.put(
                        stage,
                        new PastVisit(
                                way.order(),
                                way.kind(),
                                stage,
                                work,
                                sheet,
                                present(stage, done, answer.at()),
                                !answer.signed(),
                                OptionalDouble.empty()));
            }
            return visits.containsKey(stage);
        }

        private double present(String stage, Instant from, Instant to) {
            return away.and(idle.at(stage)).present(from, to, there(stage));
        }

        private void signedAfterAll(Answer answer) {
            String stage = answer.stage();
            Instant from = refused.remove(stage);
            Optional<Instant> last = answer.evidence().filter(at -> from != null && at.isAfter(from));
            last.ifPresent(
                    until -> visits.computeIfPresent(stage, (key, visit) -> visit.again(present(stage, from, until))));
        }
    }
}
