package wainbook.line.cause;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import wainbook.line.station.Situation;
import wainbook.line.station.StationState;
import wainbook.page.Words;
import wainbook.station.StationSaying.Help;
import wainbook.station.help.HelpCall;

/**
 * What people can do now that frees most, by plain rules: whoever was called for safety; then gates that are ready and
 * vehicles that can move on; then nonconformities, holds, other calls for help. Within each the one for which most stations
 * wait, then the oldest. No minutes are promised.
 */
public final class FirstThings {

    static final int SHOWN = 6;

    /** One thing to do, and what it frees. */
    public record First(String text, String path, String frees) {}

    private record Ranked(int rank, long waiting, Instant since, First first) {}

    private final Map<String, Long> waiting;
    private final List<Ranked> found = new ArrayList<>();

    private FirstThings(Map<String, Long> waiting) {
        this.waiting = waiting;
    }

    /** @param waiting how many stations wait for each station, in the end */
    public static List<First> of(List<Situation> line, Map<String, Long> waiting) {
        var things = new FirstThings(waiting);
        line.forEach(things::look);
        return things.found.stream()
                .sorted(Comparator.comparingInt(Ranked::rank)
                        .thenComparing(Comparator.comparingLong(Ranked::waiting).reversed())
                        .thenComparing(Ranked::since))
                .limit(SHOWN)
                .map(Ranked::first)
                .toList();
    }

    private void look(Situation here) {
        String order = here.order().number();
        String vehicle = "/orders/" + order;
        for (HelpCall call : here.calls()) {
            boolean safety = call.said().help() == Help.SAFETY;
            String key = call.said().workStands() ? "line.freesStands" : "line.freesCaller";
            add(
                    safety ? 0 : 4,
                    here,
                    call.since(),
                    new First(
                            Words.of("line.firstHelp", call.called(), order),
                            HelpCall.path(order, call.number()),
                            Words.of(safety ? "line.freesSafety" : key)));
        }
        if (here.state() == StationState.AWAITING_SIGN_OFF) {
            String stage = here.order().stage().orElse("");
            add(
                    1,
                    here,
                    here.since(),
                    new First(Words.of("line.firstSign", order), "/gates/" + order + "/" + stage, frees(here, order)));
        }
        if (here.state() == StationState.BLOCKED && waiting.containsKey(here.station())) {
            add(
                    1,
                    here,
                    here.since(),
                    new First(Words.of("line.firstMove", order), vehicle + "/move", frees(here, order)));
        }
        here.nonconformities()
                .forEach(open -> add(
                        2,
                        here,
                        open.since(),
                        new First(
                                Words.of("line.firstDecide", open.number(), order),
                                vehicle + "#matters",
                                Words.of("line.freesGate", order))));
        here.holds()
                .forEach(hold -> add(
                        3,
                        here,
                        hold.since(),
                        new First(
                                Words.of("line.firstRelease", hold.hold(), order),
                                vehicle + "#holds",
                                Words.of("line.freesHeld", order, hold.stops()))));
    }

    private void add(int rank, Situation here, Instant since, First first) {
        found.add(new Ranked(rank, waiting.getOrDefault(here.station(), 0L), since, first));
    }

    private String frees(Situation here, String order) {
        long behind = waiting.getOrDefault(here.station(), 0L);
        return behind == 0 ? Words.of("line.freesOwn", order) : Words.of("line.freesBehind", order, behind);
    }
}
