package wainbook.gate.passage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.gate.past.VehicleWay;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Chosen;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/**
 * One vehicle's way through one stage, begun with its first entry and ended with the sign-off.
 *
 * @param items answered there: what could go wrong
 */
public record Passage(String order, String vehicleKind, String stage, Instant signedAt, int items, List<Slip> slips) {

    public Passage {
        slips = List.copyOf(slips);
    }

    public boolean firstPass() {
        return slips.isEmpty();
    }

    /** Counts working minutes between two times. */
    public interface Minutes {
        long between(Instant from, Instant to);
    }

    /** Every stage that was signed off, once, in the order of the record. */
    public static List<Passage> of(History history, Minutes minutes) {
        return VehicleWay.of(history).map(way -> of(history, way, minutes)).orElse(List.of());
    }

    /** The same of a way that is read already. */
    public static List<Passage> of(History history, VehicleWay way, Minutes minutes) {
        return way.firstSignatures()
                .map(signed -> {
                    var slips = new Slips(history, way.kind(), signed.stage(), minutes);
                    return new Passage(
                            way.order(), way.kind(), signed.stage(), signed.at(), slips.items(), slips.all());
                })
                .toList();
    }

    /** What went wrong at one stage of one vehicle. */
    private record Slips(History history, String kind, String stage, Minutes minutes) {

        int items() {
            return (int) history.saying(Result.class)
                    .map(entry -> (Result) entry.saying())
                    .filter(said -> said.about().stage().equals(stage))
                    .map(said -> said.about().line())
                    .distinct()
                    .count();
        }

        List<Slip> all() {
            var slips = new ArrayList<Slip>();
            Map<UUID, Result> results = new HashMap<>();
            Map<String, UUID> passed = new HashMap<>();
            for (Entry entry : history.entries()) {
                if (entry.saying() instanceof Result said
                        && said.about().stage().equals(stage)) {
                    results.put(entry.id(), said);
                    result(entry, said, passed).ifPresent(slips::add);
                } else if (entry.saying() instanceof Voided said && results.containsKey(said.entry())) {
                    passed.values().remove(said.entry());
                    About about = results.get(said.entry()).about();
                    slips.add(slip(Slip.Sort.VOIDED, "VOIDED", about.item(), part(about), entry, Optional.empty()));
                } else if (entry.saying() instanceof NonconformityOpened said
                        && said.stage().equals(stage)
                        && said.cause() == Cause.REPORTED) {
                    slips.add(slip(
                            Slip.Sort.REPORTED,
                            "REPORTED",
                            said.item().map(Slips::key).orElse(""),
                            said.item().map(this::partOf).orElse(""),
                            entry,
                            decided(entry, said)));
                }
            }
            return slips;
        }

        private Optional<Slip> result(Entry entry, Result said, Map<String, UUID> passed) {
            String line = said.about().line();
            if (said.verdict() == Verdict.FAIL) {
                String cause = said instanceof Chosen ? "FOUND_WRONG" : "OUTSIDE_LIMITS";
                return Optional.of(slip(
                        Slip.Sort.FAILED,
                        cause,
                        said.about().item(),
                        part(said.about()),
                        entry,
                        putRight(entry, line)));
            }
            return passed.put(line, entry.id()) == null
                    ? Optional.empty()
                    : Optional.of(slip(
                            Slip.Sort.DONE_AGAIN,
                            "DONE_AGAIN",
                            said.about().item(),
                            part(said.about()),
                            entry,
                            Optional.empty()));
        }

        private Optional<Long> putRight(Entry failed, String line) {
            return history.saying(Result.class)
                    .filter(entry -> entry.number() > failed.number())
                    .filter(entry -> ((Result) entry.saying()).about().line().equals(line)
                            && ((Result) entry.saying()).verdict() == Verdict.PASS)
                    .findFirst()
                    .map(entry -> since(failed, entry));
        }

        private Optional<Long> decided(Entry opened, NonconformityOpened said) {
            return history.saying(Disposed.class)
                    .filter(entry -> ((Disposed) entry.saying()).nonconformity() == said.nonconformity())
                    .findFirst()
                    .map(entry -> since(opened, entry));
        }

        private long since(Entry from, Entry to) {
            return minutes.between(from.moment().at(), to.moment().at());
        }

        /** A nonconformity names its item with the sheet before it. */
        private static String key(String line) {
            return line.substring(line.indexOf('/') + 1);
        }

        private static String part(About about) {
            return String.join(" + ", about.fits());
        }

        /** What an item fits stands in its entries. */
        private String partOf(String line) {
            return history.saying(Result.class)
                    .map(entry -> ((Result) entry.saying()).about())
                    .filter(about -> about.line().equals(line))
                    .map(Slips::part)
                    .findFirst()
                    .orElse("");
        }

        private Slip slip(Slip.Sort sort, String cause, String item, String part, Entry entry, Optional<Long> lost) {
            return new Slip(
                    sort,
                    cause,
                    history.subject().code(),
                    kind,
                    stage,
                    item,
                    part,
                    entry.moment().at(),
                    entry.number(),
                    lost);
        }
    }
}
