package wainbook.line.balance;

import java.util.Optional;
import java.util.UUID;
import wainbook.engineering.balance.Aim;
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Progress;
import wainbook.engineering.balance.Search;
import wainbook.line.balance.asked.Asked;
import wainbook.line.balance.content.Recorded;

/** A search that runs; where there are rules on items, a second one behind it tells what they cost. */
final class Running {

    /** Of the seconds, for the first where there is a second. */
    private static final double FIRST = 0.75;

    private final UUID id;
    private final Asked asked;
    private final Recorded recorded;
    private final Search search;
    private final Optional<Search> withoutRules;
    private final long begun = System.nanoTime();
    private volatile Optional<Progress> progress = Optional.empty();
    private volatile boolean comparing;
    private volatile boolean cancelled;

    private Running(UUID id, Asked asked, Recorded recorded, Search search, Optional<Search> withoutRules) {
        this.id = id;
        this.asked = asked;
        this.recorded = recorded;
        this.search = search;
        this.withoutRules = withoutRules;
    }

    /** Empty if items wait for each other in a circle. */
    static Optional<Running> of(UUID id, Asked asked, Recorded recorded) {
        double seconds = asked.question().seconds();
        boolean rules = !asked.question().rules().isEmpty();
        Aim aim = asked.aim(rules ? FIRST * seconds : seconds);
        Optional<Search> behind = rules
                ? Search.of(
                        asked.workWithoutRules(),
                        asked.aim((1 - FIRST) * seconds).then(Aim.Then.ANY, aim.today()))
                : Optional.empty();
        return Search.of(asked.work(), aim).map(search -> new Running(id, asked, recorded, search, behind));
    }

    Proposal find() {
        Found found = search.find(now -> progress = Optional.of(now));
        comparing = withoutRules.isPresent();
        Optional<Found> without = withoutRules.filter(any -> !cancelled).map(other -> other.find(unheard -> {}));
        return Proposal.of(asked, recorded, found, without);
    }

    /** What was found until then is kept. */
    void cancel() {
        cancelled = true;
        stop();
    }

    void stop() {
        search.stop();
        withoutRules.ifPresent(Search::stop);
    }

    boolean is(UUID other) {
        return id.equals(other);
    }

    UUID id() {
        return id;
    }

    boolean cancelled() {
        return cancelled;
    }

    Optional<Progress> progress() {
        return progress;
    }

    /** Whether it looks by now what the rules cost. */
    boolean comparing() {
        return comparing;
    }

    double seconds() {
        return (System.nanoTime() - begun) / 1e9;
    }
}
