package wainbook.line.cause;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.engineering.flow.forecast.Gain;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.station.Situation;
import wainbook.line.station.StationState;
import wainbook.order.hold.HoldByRule;
import wainbook.page.Words;
import wainbook.station.StationSaying.Help;
import wainbook.station.help.HelpCall;

/**
 * What people can do now that frees most. Whoever was called for safety comes first, by our rule. Then what saves the line most late
 * minutes by the forecast, ties the older; then what saves none that can be told from chance, is not in the forecast or is still being
 * worked out, the oldest first.
 */
public final class FirstThings {

    static final int SHOWN = 6;

    /** What ending a matter now does for the line; nothing for those that are still being worked out. */
    public interface Worth {
        Map<Matter, Gain> of(Set<Matter> matters);
    }

    /**
     * One thing to do, and what it frees.
     *
     * @param worth in words, late minutes or why there are none to name
     * @param interval between which the late minutes lie; empty where none are named
     */
    public record First(String text, String path, String frees, Optional<String> worth, Optional<String> interval) {

        First(String text, String path, String frees) {
            this(text, path, frees, Optional.empty(), Optional.empty());
        }

        First worth(String words) {
            return new First(text, path, frees, Optional.of(words), Optional.empty());
        }

        First saving(Gain gain) {
            long minutes = Math.round(gain.lateMinutes().mean());
            return new First(
                    text,
                    path,
                    frees,
                    Optional.of(earlier(Words.of("line.firstSaves", minutes), gain)),
                    Optional.of(Words.of(
                            "line.firstBetween",
                            Math.round(gain.lateMinutes().low()),
                            Math.round(gain.lateMinutes().high()),
                            gain.lateMinutes().pairs())));
        }
    }

    private static String earlier(String saves, Gain gain) {
        return gain.earlier() == 0 ? saves : Words.of("line.firstEarlier", saves, gain.earlier());
    }

    private record Found(boolean safety, Instant since, Optional<Matter> matter, First first) {}

    private final Map<String, Long> waiting;
    private final List<Found> found = new ArrayList<>();

    private FirstThings(Map<String, Long> waiting) {
        this.waiting = waiting;
    }

    /** @param waiting how many stations wait for each station, in the end */
    public static List<First> of(List<Situation> line, Map<String, Long> waiting, Worth worth) {
        var things = new FirstThings(waiting);
        line.forEach(things::look);
        Map<Matter, Gain> gains = worth.of(
                things.found.stream().flatMap(one -> one.matter().stream()).collect(Collectors.toSet()));
        return things.found.stream()
                .sorted(Comparator.comparing((Found one) -> !one.safety())
                        .thenComparing(one -> -saved(one, gains))
                        .thenComparing(Found::since))
                .limit(SHOWN)
                .map(one -> told(one, gains))
                .toList();
    }

    private static double saved(Found one, Map<Matter, Gain> gains) {
        return one.matter()
                .map(gains::get)
                .filter(Gain::shown)
                .map(gain -> gain.lateMinutes().mean())
                .orElse(0.0);
    }

    private static First told(Found one, Map<Matter, Gain> gains) {
        if (one.safety() || one.first().worth().isPresent()) {
            return one.first();
        }
        if (one.matter().isEmpty()) {
            return one.first().worth(Words.of("line.firstNotInForecast"));
        }
        Optional<Gain> gain = one.matter().map(gains::get);
        return gain.filter(Gain::shown)
                .map(one.first()::saving)
                .orElseGet(() ->
                        one.first().worth(Words.of(gain.isPresent() ? "line.firstSavesNone" : "line.firstWorkedOut")));
    }

    private void look(Situation here) {
        String order = here.order().number();
        String vehicle = "/orders/" + order;
        here.calls().forEach(call -> add(here, call));
        if (here.state() == StationState.AWAITING_SIGN_OFF) {
            String stage = here.order().stage().orElse("");
            add(
                    here.since(),
                    new Matter(Matter.Sort.SIGNATURE, order, 0),
                    new First(Words.of("line.firstSign", order), "/gates/" + order + "/" + stage, frees(here, order)));
        }
        if (here.state() == StationState.BLOCKED && waiting.containsKey(here.station())) {
            add(
                    here.since(),
                    new Matter(Matter.Sort.MOVE, order, 0),
                    new First(Words.of("line.firstMove", order), vehicle + "/move", frees(here, order)));
        }
        here.nonconformities()
                .forEach(open -> add(
                        open.since(),
                        new Matter(Matter.Sort.NONCONFORMITY, order, open.number()),
                        new First(
                                Words.of("line.firstDecide", open.number(), order),
                                vehicle + "#matters",
                                Words.of("line.freesGate", order))));
        AwaitedParts.of(here.history()).openAt(here.order().stage()).forEach(part -> add(here, part));
        here.holds()
                .forEach(hold -> add(
                        hold.since(),
                        new Matter(Matter.Sort.HOLD, order, hold.hold()),
                        new First(
                                Words.of("line.firstRelease", hold.hold(), order),
                                vehicle + "#holds",
                                Words.of("line.freesHeld", order, hold.stops()))));
        here.heldByRule().forEach(hold -> add(order, hold));
    }

    private void add(String order, HoldByRule hold) {
        found.add(new Found(
                false,
                hold.since(),
                Optional.empty(),
                new First(
                                Words.of("line.firstReleaseByRule", hold.title(), order),
                                hold.path(),
                                Words.of("line.freesHeld", order, hold.stopsInWords()))
                        .worth(Words.of("line.firstByRule"))));
    }

    /** Of a vehicle that stands where it is missing; elsewhere there is time. */
    private void add(Situation here, AwaitedPart part) {
        String order = here.order().number();
        add(
                part.since(),
                new Matter(Matter.Sort.PART, order, part.number()),
                new First(
                        Words.of("line.firstPart", part.named(), order), AwaitedPart.path(order), frees(here, order)));
    }

    private void add(Situation here, HelpCall call) {
        String order = here.order().number();
        boolean safety = call.said().help() == Help.SAFETY;
        boolean stands = call.said().workStands();
        String key = stands ? "line.freesStands" : "line.freesCaller";
        found.add(new Found(
                safety,
                call.since(),
                stands && !safety ? Optional.of(new Matter(Matter.Sort.HELP, order, call.number())) : Optional.empty(),
                new First(
                        Words.of("line.firstHelp", call.called(), order),
                        HelpCall.path(order, call.number()),
                        Words.of(safety ? "line.freesSafety" : key))));
    }

    private void add(Instant since, Matter matter, First first) {
        found.add(new Found(false, since, Optional.of(matter), first));
    }

    private String frees(Situation here, String order) {
        long behind = waiting.getOrDefault(here.station(), 0L);
        return behind == 0 ? Words.of("line.freesOwn", order) : Words.of("line.freesBehind", order, behind);
    }
}
