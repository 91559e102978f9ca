package wainbook.page.ledger;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;

/**
 * The page of the verification.
 *
 * @param stored how much there is to read
 * @param done what was read and found; absent before
 */
public record VerificationView(Verify.Extent stored, Optional<Done> done) {

    /** A verification that is over. */
    public record Done(
            boolean sound, long streams, long entries, long files, List<Found> findings, Instant at, String seconds) {
        static Done of(VerificationReport report, Instant at, Duration took) {
            return new Done(
                    report.sound(),
                    report.streams(),
                    report.entries(),
                    report.files(),
                    report.findings().stream().map(Found::of).toList(),
                    at,
                    "%.1f".formatted(took.toMillis() / 1000.0));
        }
    }
}
