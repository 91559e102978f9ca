package wainbook.station.help;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.page.Words;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpAnswered;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.StationSaying.HelpResolved;

/**
 * A call for help as it stands.
 *
 * @param entry the number of the entry that called
 * @param answered by whom and when it was answered first
 * @param resolved the first word that it is settled
 */
public record HelpCall(
        HelpCalled said, String calledBy, Instant since, long entry, Optional<Step> answered, Optional<Step> resolved) {

    /** Somebody who came, or who settled it. */
    public record Step(String who, Instant at, Optional<String> words) {}

    /** All calls of a work order, oldest first. */
    public static List<HelpCall> of(History history) {
        Map<Integer, HelpCall> calls = new LinkedHashMap<>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof HelpCalled said) {
                calls.put(
                        said.call(),
                        new HelpCall(
                                said,
                                entry.moment().who(),
                                entry.moment().at(),
                                entry.number(),
                                Optional.empty(),
                                Optional.empty()));
            } else if (entry.saying() instanceof HelpAnswered said) {
                calls.computeIfPresent(said.call(), (number, call) -> call.answered(step(entry, Optional.empty())));
            } else if (entry.saying() instanceof HelpResolved said) {
                calls.computeIfPresent(said.call(), (number, call) -> call.resolved(step(entry, said.words())));
            }
        }
        return List.copyOf(calls.values());
    }

    public static List<HelpCall> open(History history) {
        return of(history).stream().filter(HelpCall::isOpen).toList();
    }

    public static Optional<HelpCall> of(History history, int call) {
        return of(history).stream().filter(known -> known.number() == call).findFirst();
    }

    /** What was said first stands: whoever answers or settles after that is only on record. */
    private HelpCall answered(Step step) {
        return answered.isPresent() ? this : new HelpCall(said, calledBy, since, entry, Optional.of(step), resolved);
    }

    private HelpCall resolved(Step step) {
        return resolved.isPresent() ? this : new HelpCall(said, calledBy, since, entry, answered, Optional.of(step));
    }

    private static Step step(Entry entry, Optional<String> words) {
        return new Step(entry.moment().who(), entry.moment().at(), words);
    }

    public int number() {
        return said.call();
    }

    public boolean isOpen() {
        return resolved.isEmpty();
    }

    /** Whether work stands still at this station for it. */
    public boolean stops(String station) {
        return isOpen() && said.workStands() && said.place().equals(Optional.of(station));
    }

    /** Which of the four meanings of IEC 60073 it has. */
    public String meaning() {
        return said.workStands() || said.help() == Help.SAFETY ? "danger" : "warn";
    }

    public String called() {
        return word(said.help());
    }

    public static String word(Help help) {
        return Words.of("station.help." + help.name());
    }

    public static String path(String order, int call) {
        return "/orders/" + order + "/help/" + call;
    }
}
