package wainbook.page.ledger;

import wainbook.ledger.verification.Finding;
import wainbook.page.Words;

/** A finding in words: where, and in which way the record is not as it was written. */
public record Found(String where, String what) {
    public static Found of(Finding finding) {
        return new Found(
                finding.where(),
                Words.of("ledger.found." + finding.what(), finding.arguments().toArray()));
    }
}
