package wainbook.quality.containment.doubt;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Window;
import wainbook.works.WorksSaying.ToolChecked;

/**
 * What an instrument's history says against the readings made with it.
 *
 * @param errors absent where nothing can be worked out: then every reading in the window is possible
 * @param checks passed checks on the works' own tester within the window, oldest first
 */
public record Doubt(Window window, Optional<Errors> errors, List<PassedCheck> checks) {

    /** A check that a tool passed at one torque. It speaks for readings near it: within a fifth or a quarter (works rule). */
    public record PassedCheck(Instant at, BigDecimal target, BigDecimal errorPercent) {

        private static final BigDecimal LEAST = new BigDecimal("0.8");
        private static final BigDecimal MOST = new BigDecimal("1.25");

        boolean near(BigDecimal reading) {
            return reading.compareTo(target.multiply(LEAST)) >= 0 && reading.compareTo(target.multiply(MOST)) <= 0;
        }
    }

    public Doubt {
        checks = List.copyOf(checks);
    }

    /** The same window and errors, with what was checked meanwhile. After a stated fall no check speaks for anything. */
    public static Doubt of(Window window, Optional<Errors> errors, History instrument) {
        boolean heard = switch (window.basis()) {
            case CALIBRATED, NEVER_GOOD, PAST_DUE -> true;
            case STATED, ASKED, ALL_TIME -> false;
        };
        List<PassedCheck> checks = instrument.entries().stream()
                .filter(entry -> heard && entry.saying() instanceof ToolChecked said && said.passed())
                .filter(entry -> within(window, entry.moment().at()))
                .map(Doubt::passed)
                .toList();
        return new Doubt(window, errors, checks);
    }

    private static PassedCheck passed(Entry entry) {
        ToolChecked said = (ToolChecked) entry.saying();
        return new PassedCheck(entry.moment().at(), said.target(), said.errorPercent());
    }

    static boolean within(Window window, Instant at) {
        return !at.isBefore(window.from()) && !at.isAfter(window.to());
    }

    public Doubted judge(Found found, boolean voided) {
        if (found.failedThen()) {
            return found.judged(voided, Sureness.SAFE, Ground.FAILED_THEN, Optional.empty());
        }
        Optional<Found.Value> value = found.value();
        if (value.isEmpty()) {
            Ground ground = switch (found.nature()) {
                case PROOF_OF_DEAD -> Ground.PROOF_OF_DEAD;
                case READING, OTHER -> Ground.RESTS_ON_IT;
            };
            return found.judged(voided, Sureness.POSSIBLE, ground, Optional.empty());
        }
        Instant at = found.entry().moment().at();
        BigDecimal reading = value.get().reading();
        if (checks.stream().anyMatch(check -> check.near(reading) && !check.at().isBefore(at))) {
            return found.judged(voided, Sureness.SAFE, Ground.CHECKED_SINCE, Optional.empty());
        }
        if (errors.isEmpty()) {
            return found.judged(voided, Sureness.POSSIBLE, Ground.NO_FIGURES, Optional.empty());
        }
        Optional<PassedCheck> since =
                checks.stream().filter(check -> check.near(reading)).reduce((former, latter) -> latter);
        return WorkedBack.of(value.get(), at, window, errors.get(), since)
                .map(back -> found.judged(voided, back.verdict(), Ground.WORKED_OUT, Optional.of(back.worked())))
                .orElseGet(() -> found.judged(voided, Sureness.POSSIBLE, Ground.NOT_COMPUTABLE, Optional.empty()));
    }
}
