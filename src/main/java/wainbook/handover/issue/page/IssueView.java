package wainbook.handover.issue.page;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.issue.IssueRules;
import wainbook.handover.issue.Issues;
import wainbook.ledger.Entry;
import wainbook.page.Filled;

/**
 * One document as it would be issued now.
 *
 * @param html as it reads; empty where its text cannot be filled
 * @param broken why it cannot be filled
 */
public record IssueView(
        IssueRules rules, Issues issues, long seen, Optional<String> html, List<Reason> broken, Filled filled) {

    public String number() {
        return rules.order();
    }

    public int next() {
        return issues.count() + 1;
    }

    public Optional<Entry> last() {
        return issues.last();
    }

    /** The fingerprint of the last issue's file. */
    public String file() {
        return ((Issued) last().orElseThrow().saying()).file().sha256();
    }

    /** What the text's own marks became: escaped where it was made. */
    public RawString shown() {
        return new RawString(html.orElse(""));
    }

    public List<Reason> against() {
        return rules.against();
    }
}
