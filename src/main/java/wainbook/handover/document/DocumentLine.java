package wainbook.handover.document;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.Standing;
import wainbook.handover.requirement.Rule;
import wainbook.order.FactQuestion;
import wainbook.page.Formats;
import wainbook.page.Words;

/** A document in words. */
public record DocumentLine(String order, Document document, LocalDate today, boolean handedOver) {

    private static final Pattern FACT = Pattern.compile("\\b([a-z]+(?:_[a-z]+)*) = (true|false)?");

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    /** A calculation by its name and title. */
    public record Calculated(String name, String title) {}

    public String path() {
        return "/handover/" + order + "/documents/" + document.id();
    }

    public Standing standing() {
        return document.standing();
    }

    public String name() {
        int needed = document.requirement().documents();
        return needed > 1
                ? Words.of(
                        "handover.several." + document.rule().per().orElseThrow(),
                        document.rule().document(),
                        needed)
                : document.rule().document();
    }

    /** With the facts in words; rules and scripts call them by their short names. */
    public String because() {
        if (!facts().isEmpty()) {
            return Words.of("handover.unknown", names(document.requirement().missingFacts()));
        }
        return FACT.matcher(say(document.requirement().because()))
                .replaceAll(found -> Matcher.quoteReplacement(Words.of(
                        "handover.factIs",
                        FactQuestion.name(found.group(1)),
                        Optional.ofNullable(found.group(2))
                                .map(FactQuestion::word)
                                .orElse(""))));
    }

    public Optional<String> remark() {
        return document.requirement().note().map(DocumentLine::say);
    }

    /** The rule's source, and how it is known. */
    public String source() {
        var source = document.rule().source();
        String told = Words.of(
                "handover.sourceAndStanding",
                source.document(),
                source.clause(),
                Words.of("handover.known." + source.standing().name()));
        return document.rule()
                .replaces()
                .map(other -> Words.of("handover.inPlaceOf", told, other))
                .orElse(told);
    }

    /** How long it is valid, where the rule names a time. */
    public Optional<String> validity() {
        return document.rule().validMonths().map(months -> Words.of("handover.validMonths", months));
    }

    public String validUntilHint() {
        return document.rule()
                .validMonths()
                .map(months -> Words.of("handover.validMonthsHint", months))
                .orElseGet(() -> Words.of("handover.validUntilHint"));
    }

    /** The calculation behind what the document says. */
    public Optional<Calculated> working() {
        return document.rule().working().map(name -> new Calculated(name, Words.of("engineering." + name + ".title")));
    }

    public boolean fromMemory() {
        return !document.rule().mayBar();
    }

    public String duty() {
        return Words.of("handover.duty." + document.rule().duty().name());
    }

    /** By when it must be there; for one that follows, the day, once there is one to count from. */
    public String due() {
        Rule.Due due = document.rule().due();
        if (due == Rule.Due.MAY_FOLLOW && handedOver) {
            return Words.of(
                    "handover.followsBy", Formats.date(document.followsBy().orElseThrow()));
        }
        return due == Rule.Due.MAY_FOLLOW
                ? Words.of(
                        "handover.due.MAY_FOLLOW", document.rule().followDays().orElseThrow())
                : Words.of("handover.due." + due.name());
    }

    public boolean overdue() {
        return handedOver && document.overdueOn(today);
    }

    public List<FactQuestion> facts() {
        return document.waitsForFacts()
                ? document.requirement().missingFacts().stream()
                        .map(fact -> FactQuestion.of(fact, ""))
                        .toList()
                : List.of();
    }

    /** What was noted last, in a sentence; empty where nothing was. */
    public Optional<String> noted() {
        return document.noted().map(note -> inWords(note.said()));
    }

    /** A note in words, without the document's name. */
    public static String inWords(DocumentNoted said) {
        var words = new StringBuilder(Words.of("handover.state." + said.state().name()));
        if (!said.reference().isBlank()) {
            words.append(Words.of("handover.withReference", said.reference()));
        }
        said.validUntil().ifPresent(day -> words.append(Words.of("handover.withValidity", Formats.date(day))));
        said.file()
                .ifPresent(file ->
                        words.append(Words.of("handover.withFile", file.sha256().substring(0, 8))));
        if (!said.note().isBlank()) {
            words.append(Words.of("handover.withNote", said.note()));
        }
        return words.toString();
    }

    private static String names(List<String> facts) {
        return facts.stream().map(FactQuestion::name).collect(Collectors.joining(", "));
    }

    private static String say(Reason reason) {
        return Words.of(
                reason.key(),
                reason.arguments().stream()
                        .map(argument ->
                                DAY.matcher(argument).matches() ? Formats.date(LocalDate.parse(argument)) : argument)
                        .toArray());
    }
}
