package wainbook.handover.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.handover.document.Difference;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentLine;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.order.FactQuestion;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * What the same vehicle would need by another market's rules. A question: nothing of it is written.
 *
 * @param supposed its documents by the other rules
 */
public record AnotherMarket(HandoverView own, DocumentSet supposed) {

    /** A sort of change, with what changes so. */
    public record Part(String anchor, String title, String text, List<ChangeLine> lines) {
        /** What falls away needs no reason any more. */
        public boolean brief() {
            return lines.stream()
                    .allMatch(change -> change.state() == Shown.NO_RULE || change.state() == Shown.NOT_NEEDED);
        }
    }

    /** One change in words. */
    public record ChangeLine(DocumentLine line, Optional<Answer> before, Optional<Answer> after, String told) {
        public Shown state() {
            return after.map(Shown::of).orElse(Shown.NO_RULE);
        }
    }

    /** An answer as it is shown. */
    public enum Shown {
        NEEDED("warn", "alert"),
        ASK("warn", "ask"),
        NOT_NEEDED("quiet", "off"),
        NO_RULE("quiet", "off");

        private final String meaning;
        private final String sign;

        Shown(String meaning, String sign) {
            this.meaning = meaning;
            this.sign = sign;
        }

        static Shown of(Answer answer) {
            return valueOf(answer.name());
        }

        public String word() {
            return Words.of("handover.answer." + name());
        }

        public String meaning() {
            return meaning;
        }

        public String sign() {
            return sign;
        }
    }

    public String number() {
        return own.number();
    }

    public String market() {
        return name(supposed.set());
    }

    public String title() {
        return Words.of("handover.supposedTitle", number(), market());
    }

    public String basis() {
        return Words.of("handover.basis", supposed.set(), supposed.revision(), Formats.date(supposed.handover()));
    }

    /** That this is a question, and by which rules the vehicle goes all the same. */
    public String onlyAsked() {
        return Words.of("handover.supposedOnly", number(), name(own.market()), own.market());
    }

    public Optional<String> localLaw() {
        return HandoverView.localLaw(supposed.set());
    }

    public boolean comparable() {
        return own.knowsRules();
    }

    /** The difference in one sentence. */
    public String sum() {
        var difference = difference().orElseThrow();
        return Words.of(
                "handover.supposedSum",
                market(),
                difference.inAddition().size(),
                difference.becomesQuestion().size(),
                difference.fallsAway().size());
    }

    public List<Part> parts() {
        return difference().stream()
                .flatMap(difference -> Stream.of(
                        part("inAddition", difference.inAddition()),
                        part("becomesQuestion", difference.becomesQuestion()),
                        part("fallsAway", difference.fallsAway())))
                .toList();
    }

    /** Facts that these rules ask for and nobody stated. */
    public List<FactQuestion> missingFacts() {
        return supposed.missingFacts().stream()
                .map(fact -> FactQuestion.of(fact, ""))
                .toList();
    }

    public List<DocumentLine> needed() {
        return lines(document -> document.requirement().answer() == Answer.NEEDED);
    }

    public List<DocumentLine> asked() {
        return lines(document -> document.requirement().answer() == Answer.ASK);
    }

    public List<DocumentLine> notNeeded() {
        return lines(document -> document.requirement().answer() == Answer.NOT_NEEDED);
    }

    public String csv() {
        return own.csv() + "?set=" + supposed.set();
    }

    Optional<Difference> difference() {
        return own.rules().documents().map(known -> Difference.between(known, supposed));
    }

    DocumentLine line(Document document) {
        return new DocumentLine(number(), document, own.today(), false);
    }

    static String name(String set) {
        return Words.find("handover.set." + set).orElse(set);
    }

    /** Its name where it stands by itself. */
    static String title(String set) {
        String name = name(set);
        return name.isEmpty() ? name : name.substring(0, 1).toUpperCase(Words.LOCALE) + name.substring(1);
    }

    public String marketTitle() {
        return title(supposed.set());
    }

    private List<DocumentLine> lines(Predicate<Document> which) {
        return supposed.documents().stream().filter(which).map(this::line).toList();
    }

    private Part part(String kind, List<Difference.Change> changes) {
        return new Part(
                kind,
                Words.of("handover." + kind + "Title", changes.size()),
                Words.of("handover." + kind + "Text"),
                changes.stream().map(this::line).toList());
    }

    private ChangeLine line(Difference.Change change) {
        return new ChangeLine(
                line(change.document()),
                change.own(),
                change.other(),
                Words.of(
                        "handover.changeTold", own.market(), word(change.own()), supposed.set(), word(change.other())));
    }

    private static String word(Optional<Answer> answer) {
        return answer.map(Shown::of).orElse(Shown.NO_RULE).word();
    }
}
