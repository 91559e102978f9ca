package wainbook.handover.document;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.handover.requirement.Requirement.Answer;

/**
 * What would be different for the same vehicle, on the same day, under another set of rules. Documents are the same where their
 * rule is; one that another law asks for is another document.
 */
public record Difference(List<Change> inAddition, List<Change> becomesQuestion, List<Change> fallsAway) {

    /**
     * One document of which the two sets say different things.
     *
     * @param document as the other set has it; one that falls away, as the vehicle's own has it
     * @param own what the vehicle's own set says; empty where it has no such rule
     * @param other what the other set says; empty where it has no such rule
     */
    public record Change(Document document, Optional<Answer> own, Optional<Answer> other) {}

    public Difference {
        inAddition = List.copyOf(inAddition);
        becomesQuestion = List.copyOf(becomesQuestion);
        fallsAway = List.copyOf(fallsAway);
    }

    public static Difference between(DocumentSet own, DocumentSet other) {
        return new Difference(
                becomes(Answer.NEEDED, own, other), becomes(Answer.ASK, own, other), fallsAway(own, other));
    }

    private static List<Change> becomes(Answer answer, DocumentSet own, DocumentSet other) {
        Map<String, Answer> before = answers(own);
        return other.documents().stream()
                .filter(document -> answer(document) == answer && before.get(document.id()) != answer)
                .map(document ->
                        new Change(document, Optional.ofNullable(before.get(document.id())), Optional.of(answer)))
                .toList();
    }

    private static List<Change> fallsAway(DocumentSet own, DocumentSet other) {
        Map<String, Answer> after = answers(other);
        return own.documents().stream()
                .filter(document -> answer(document) != Answer.NOT_NEEDED)
                .filter(document -> after.getOrDefault(document.id(), Answer.NOT_NEEDED) == Answer.NOT_NEEDED)
                .map(document -> new Change(
                        document, Optional.of(answer(document)), Optional.ofNullable(after.get(document.id()))))
                .toList();
    }

    private static Map<String, Answer> answers(DocumentSet set) {
        return set.documents().stream().collect(Collectors.toMap(Document::id, Difference::answer));
    }

    private static Answer answer(Document document) {
        return document.requirement().answer();
    }
}
