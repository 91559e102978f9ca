package wainbook.handover.issue.page;

import java.util.List;
import java.util.Optional;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.issue.IssueRules;
import wainbook.handover.issue.Issues;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.page.Words;

/** What the works issues for one vehicle, and how far that is. */
public record IssueList(String number, History history, List<IssueRules> all) {

    /** @param last the last issue */
    public record Row(IssueRules rules, int issues, Optional<Entry> last) {

        public String path() {
            return "/handover/" + rules.order() + "/issue/" + rules.template().code();
        }

        public boolean ready() {
            return rules.missing().isEmpty();
        }

        public Issued issued() {
            return (Issued) last.orElseThrow().saying();
        }

        public String word() {
            return Words.of(
                    last.isPresent() ? "handover.issueDone" : ready() ? "handover.issueReady" : "handover.issueWaits");
        }

        public String sign() {
            return last.isPresent() ? "done" : ready() ? "signature" : "clock";
        }

        public String meaning() {
            return last.isPresent() ? "safe" : "must";
        }
    }

    public List<Row> rows() {
        return all.stream()
                .map(rules -> {
                    Issues issues = Issues.of(history, rules.template().code());
                    return new Row(rules, issues.count(), issues.last());
                })
                .toList();
    }

    public long open() {
        return rows().stream().filter(row -> row.last().isEmpty()).count();
    }

    public String title() {
        return Words.of("handover.issuesTitle", number, open());
    }
}
