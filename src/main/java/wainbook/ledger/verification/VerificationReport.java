package wainbook.ledger.verification;

import java.util.List;

/** What a verification read and what it found. Sound when it found nothing. */
public record VerificationReport(long streams, long entries, long files, List<Finding> findings) {

    public VerificationReport {
        findings = List.copyOf(findings);
    }

    public boolean sound() {
        return findings.isEmpty();
    }
}
