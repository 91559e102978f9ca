package wainbook.handover.requirement;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * When a document is needed.
 *
 * @param when a condition over the vehicle's facts; absent: always
 * @param askWhen a condition under which a needed document is asked of a person instead
 * @param ask the key of the question that goes with {@code askWhen}
 * @param noteWhen a condition under which a person is shown the note
 * @param note the key of the note
 * @param per absent: one document a vehicle
 * @param followDays for a document that may follow, the days after handover on which it is asked for
 * @param validMonths how long its document is valid at most; absent: the law names no time
 * @param working the calculation that decides what the document says; absent: none
 * @param from first day in force; absent: longer than any vehicle is of interest
 * @param to last day in force; absent: open
 * @param doubtDays the first day in force is in doubt: so many days on both sides of it nobody can tell; absent: it is sure
 * @param replaces the rule of an included set that this one takes the place of
 */
public record Rule(
        String id,
        String document,
        Optional<String> when,
        String issuer,
        Optional<String> askWhen,
        Optional<String> ask,
        Due due,
        Optional<String> noteWhen,
        Optional<String> note,
        Duty duty,
        Optional<Per> per,
        Optional<Integer> followDays,
        Optional<Integer> validMonths,
        Optional<String> working,
        String evidence,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<Integer> doubtDays,
        Optional<String> replaces,
        RuleSource source) {

    /** By when it must be there. */
    public enum Due {
        BEFORE_ROAD_USE,
        BEFORE_HANDOVER,
        MAY_FOLLOW;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Whose duty it is. */
    public enum Duty {
        WORKS,
        OPERATOR,
        KEEPER;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What each of several documents stands for. */
    public enum Per {
        PACK_TYPE,
        PACK
    }

    public Rule {
        if (!id.matches("[A-Z]{2}-[0-9]{2}")) {
            throw new IllegalArgumentException("a rule's id looks like GB-01, not: " + id);
        }
        if ((due == Due.MAY_FOLLOW) != followDays.isPresent()) {
            throw new IllegalArgumentException(id + ": a document that may follow, and no other, has follow_days");
        }
        if (askWhen.isPresent() != ask.isPresent() || noteWhen.isPresent() != note.isPresent()) {
            throw new IllegalArgumentException(id + ": a question or a note has a condition and a text");
        }
        if (validMonths.filter(months -> months < 1).isPresent()) {
            throw new IllegalArgumentException(id + ": a document is valid for a month at least");
        }
        if (doubtDays.isPresent() && from.isEmpty()) {
            throw new IllegalArgumentException(id + ": only a first day can be in doubt");
        }
        if (from.isPresent() && to.filter(from.get()::isAfter).isPresent()) {
            throw new IllegalArgumentException(id + ": it ends before it begins");
        }
    }

    public boolean inForceOn(LocalDate day) {
        return from.map(first -> !day.isBefore(first)).orElse(true)
                && to.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** Whether nobody can tell if it is in force that day. */
    public boolean inDoubtOn(LocalDate day) {
        return doubtDays
                .filter(days -> Math.abs(ChronoUnit.DAYS.between(from.orElseThrow(), day)) <= days)
                .isPresent();
    }

    /** The last day on which a document of that day is still valid: it counts whole, by choice. */
    public Optional<LocalDate> validUntil(LocalDate issued) {
        return validMonths.map(issued::plusMonths);
    }

    /** Whether there is a day on which both are in force. */
    boolean meets(Rule other) {
        return !endsBefore(other) && !other.endsBefore(this);
    }

    private boolean endsBefore(Rule other) {
        return to.isPresent() && other.from.filter(to.get()::isBefore).isPresent();
    }

    /** Whether its document can keep a vehicle in the works: one that may follow cannot. */
    public boolean mayBarHandover() {
        return mayBar() && due != Due.MAY_FOLLOW;
    }

    /** A rule that nobody has looked up asks a person, and bars nothing. */
    public boolean mayBar() {
        return source.standing() != RuleSource.Standing.MEMORY;
    }
}
