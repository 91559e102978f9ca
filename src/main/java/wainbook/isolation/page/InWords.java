package wainbook.isolation.page;

import java.time.Instant;
import java.util.List;
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.isolation.proof.Proof;
import wainbook.ledger.History;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * How a vehicle stands electrically, in one sentence for one person: what they look at before they touch anything.
 *
 * @param onPaper isolation forms in use at it: the tool does not know their locks
 */
public record InWords(Isolation isolation, List<String> onPaper, String who, Formats formats) {

    public static InWords of(History vehicle, Instant now, String who, Formats formats) {
        return new InWords(
                Isolation.of(vehicle).at(now), PaperIsolations.of(vehicle).open(), who, formats);
    }

    public String sentence() {
        String state = isolation.live().isPresent()
                ? Words.of("isolating.liveWorkOpen")
                : isolation.state() == State.LIVE && isolation.noSource().isPresent()
                        ? Words.of("isolating.noSourceDeclared")
                        : Words.of("isolation.state." + isolation.state().name());
        return paper() + state + proved() + lock();
    }

    private String paper() {
        return onPaper.isEmpty() ? "" : Words.of("isolating.formInUse", String.join(", ", onPaper)) + " ";
    }

    private String proved() {
        return isolation.state() != State.IN_FORCE
                ? ""
                : isolation
                        .proof()
                        .flatMap(Proof::testerProvedAgainAt)
                        .map(at -> Words.of("isolating.provedAt", formats.clock(at)))
                        .orElse("");
    }

    private String lock() {
        return isolation.locks().isEmpty()
                ? ""
                : Words.of(isolation.lockOn(who) ? "isolating.yourLockOn" : "isolating.yourLockOff");
    }

    /** The sign that stands beside it. */
    public String sign() {
        return isolation.state() == State.IN_FORCE ? "lock" : "flash";
    }

    /** Which of the four meanings of IEC 60073 it has: green is for whoever is safe, and that takes one's own lock. */
    public String meaning() {
        return !onPaper.isEmpty() ? "danger" : meaningOfState();
    }

    private String meaningOfState() {
        return switch (isolation.state()) {
            case IN_FORCE -> isolation.lockOn(who) ? "safe" : "must";
            case VOID -> "danger";
            case LIVE -> isolation.live().isPresent() ? "danger" : "quiet";
            case PLANNED, SHUT_DOWN, LOCKED, PROVED_DEAD, STOPPED, UNDER_TEST, HANDED_BACK, READY -> "warn";
        };
    }
}
