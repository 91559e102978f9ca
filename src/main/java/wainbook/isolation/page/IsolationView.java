package wainbook.isolation.page;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.process.plan.Source;

/**
 * What the page of one vehicle's isolation shows.
 *
 * @param words where it stands, for the reader
 * @param steps the way in its order; one is open
 * @param always what can be done at any time, safe-making first
 * @param refusals what the last try was refused for
 * @param said what the last entry came to
 */
public record IsolationView(
        String order,
        Isolation isolation,
        InWords words,
        List<Line> steps,
        List<StepForm> always,
        List<LockPlace> locks,
        List<SourceLine> sources,
        List<PointLine> points,
        List<CheckLine> checks,
        Optional<Paper> paper,
        List<Reason> refusals,
        Optional<String> said) {

    /** One rung of the way. */
    public record Line(int number, String title, String state, String by, List<StepForm> forms, String text) {}

    /** A lock that is on, and whether its owner may work dead now. */
    public record LockPlace(String number, String owner, boolean works) {}

    /** A source of the plan. */
    public record SourceLine(Source source, boolean later, Optional<Instant> openedAt) {}

    /** A point of the plan and what was read there in the proof that is under way. */
    public record PointLine(
            String code,
            String where,
            String pairs,
            Optional<Instant> firstAt,
            String highestVolt,
            Optional<Instant> againAt) {}

    /** A check before restoration. */
    public record CheckLine(String code, String what, boolean passed) {}

    /** The paper that is out, as it is printed. */
    public record Paper(
            String title,
            int number,
            String issuer,
            String holder,
            Instant validUntil,
            List<String> rows,
            boolean ownIsolation) {}
}
