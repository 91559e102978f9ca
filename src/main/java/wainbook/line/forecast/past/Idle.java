package wainbook.line.forecast.past;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.forecast.past.Away.Spell;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Voided;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.StationSaying.Waited;

/**
 * When a vehicle could but wait at a stage: for what cured, and for a part that was missing. While a part is missing other work may
 * go on, so that the wait for it begins with the last result of the stage before it came. What is still awaited has no end.
 *
 * @param byStage in any order, overlapping or not
 */
public record Idle(Map<String, List<Spell>> byStage) {

    public static Idle of(History history) {
        var reading = new Reading(new HashMap<>(), new HashMap<>(), new HashMap<>(), new HashMap<>());
        history.entries().forEach(reading::take);
        return new Idle(reading.spells(history));
    }

    public List<Spell> at(String stage) {
        return byStage.getOrDefault(stage, List.of());
    }

    private record Cure(String stage, Instant from, Instant to) {}

    private record Reading(
            Map<String, List<Instant>> results,
            Map<UUID, Cure> begun,
            Map<UUID, Instant> voided,
            Map<UUID, Cure> ended) {

        void take(Entry entry) {
            Instant at = entry.moment().at();
            if (entry.saying() instanceof WaitBegun said && Cures.minutes(said.minutes()) > 0) {
                begun.put(entry.id(), new Cure(said.about().stage(), at, at.plus(Duration.ofMinutes(said.minutes()))));
            } else if (entry.saying() instanceof Voided said) {
                voided.put(said.entry(), at);
            } else if (entry.saying() instanceof Result said) {
                results.computeIfAbsent(said.about().stage(), stage -> new ArrayList<>())
                        .add(at);
                waited(entry, said);
            }
        }

        /** A cure taken from paper has no entry of its beginning. */
        private void waited(Entry entry, Result said) {
            if (said instanceof Waited wait && Cures.minutes(wait.minutes()) > 0) {
                ended.put(
                        entry.id(),
                        new Cure(
                                said.about().stage(),
                                wait.begunAt(),
                                wait.begunAt().plus(Duration.ofMinutes(wait.minutes()))));
            }
        }

        Map<String, List<Spell>> spells(History history) {
            Map<String, List<Spell>> spells = new HashMap<>();
            begun.forEach((id, cure) ->
                    add(spells, cure.stage(), cure.from(), earlier(cure.to(), voided.getOrDefault(id, Instant.MAX))));
            ended.values().forEach(cure -> add(spells, cure.stage(), cure.from(), cure.to()));
            AwaitedParts.of(history).all().forEach(part -> {
                Instant came = part.came().orElse(Instant.MAX);
                Instant worked = results.getOrDefault(part.stage(), List.of()).stream()
                        .filter(at -> at.isAfter(part.since()) && at.isBefore(came))
                        .max(Instant::compareTo)
                        .orElse(part.since());
                add(spells, part.stage(), worked, came);
            });
            return spells;
        }

        private static void add(Map<String, List<Spell>> spells, String stage, Instant from, Instant to) {
            spells.computeIfAbsent(stage, any -> new ArrayList<>()).add(new Spell(from, to, true));
        }

        private static Instant earlier(Instant one, Instant other) {
            return one.isBefore(other) ? one : other;
        }
    }
}
