package wainbook.handover.requirement;

import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.engineering.Allowed;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Working;

/** Which documents a set of rules asks for, for stated facts on a day. The one calculation that reads a rule set. */
@Singleton
public class NeededDocuments implements Calculation<NeededDocuments.Inputs, NeededDocuments.Results> {

    /**
     * What is asked.
     *
     * @param on the day of handover
     * @param facts as {@link StatedFacts} takes them; one that is null is not known
     */
    public record Inputs(
            @Allowed(SetThatIsThere.class) String set,
            LocalDate on,
            @Allowed(FactsThatFit.class) Map<String, Optional<Object>> facts) {

        Map<String, Object> stated() {
            return NeededDocuments.stated(facts);
        }
    }

    public record Results(int revision, List<Line> requirements) {
        public Results {
            requirements = List.copyOf(requirements);
        }
    }

    /**
     * One requirement.
     *
     * @param condition what the rule asks of the facts; absent: it always applies
     * @param documents how many are needed
     * @param mayBar whether the rule can keep a vehicle in the works
     */
    public record Line(
            String id,
            String document,
            String answer,
            Sentence because,
            Source source,
            List<String> missingFacts,
            Optional<Sentence> note,
            Optional<String> condition,
            String issuer,
            String evidence,
            String due,
            String duty,
            int documents,
            boolean mayBar) {

        static Line of(Requirement requirement) {
            Rule rule = requirement.rule();
            return new Line(
                    rule.id(),
                    rule.document(),
                    requirement.answer().word(),
                    sentence(requirement.because()),
                    NeededDocuments.source(rule),
                    requirement.missingFacts(),
                    requirement.note().map(Line::sentence),
                    rule.when(),
                    rule.issuer(),
                    rule.evidence(),
                    rule.due().word(),
                    rule.duty().word(),
                    requirement.documents(),
                    rule.mayBarHandover());
        }

        private static Sentence sentence(Reason reason) {
            return new Sentence(reason.key(), reason.arguments());
        }
    }

    /** A set without rules is a fault that names those that have some. */
    static final class SetThatIsThere implements Allowed.Rule {
        @Override
        public List<Fault> faults(String field, Object set) {
            return RuleSet.there().contains(set)
                    ? List.of()
                    : List.of(Fault.of(field, "oneOf", String.join(", ", RuleSet.there())));
        }
    }

    /** Facts are known by name and of their type. */
    static final class FactsThatFit implements Allowed.Rule {
        @Override
        @SuppressWarnings("unchecked")
        public List<Fault> faults(String field, Object facts) {
            return StatedFacts.misfits(stated((Map<String, Optional<Object>>) facts)).stream()
                    .map(misfit -> new Fault(
                            field + "." + misfit.name(), Sentence.of("handover.factMisfit", misfit.expected())))
                    .toList();
        }
    }

    private final RuleSets sets;

    NeededDocuments(RuleSets sets) {
        this.sets = sets;
    }

    @Override
    public String name() {
        return "documents";
    }

    @Override
    public String title() {
        return "handover.documentsTitle";
    }

    @Override
    public List<Source> sources() {
        return RuleSet.there().stream()
                .flatMap(set -> sources(set).stream())
                .distinct()
                .toList();
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Requirements rules = sets.named(in.set()).orElseThrow();
        List<Requirement> found = rules.on(in.on(), in.stated());
        Sentence because = Sentence.of(
                "handover.documentsNone",
                count(found, Requirement.Answer.NEEDED),
                count(found, Requirement.Answer.NOT_NEEDED),
                count(found, Requirement.Answer.ASK));
        return Answer.worked(new Working<>(
                new Results(
                        rules.rules().revision(), found.stream().map(Line::of).toList()),
                Optional.empty(),
                because,
                List.of(),
                sources(in.set()),
                List.of(Sentence.of("handover.noAdvice"), Sentence.of("handover.fromMemory"))));
    }

    private List<Source> sources(String set) {
        return sets.named(set).orElseThrow().rules().rules().stream()
                .map(NeededDocuments::source)
                .distinct()
                .toList();
    }

    private static Source source(Rule rule) {
        return new Source(
                rule.source().document(),
                rule.source().clause(),
                Source.Standing.valueOf(rule.source().standing().name()));
    }

    private static long count(List<Requirement> found, Requirement.Answer answer) {
        return found.stream()
                .filter(requirement -> requirement.answer() == answer)
                .count();
    }

    private static Map<String, Object> stated(Map<String, Optional<Object>> facts) {
        Map<String, Object> stated = new LinkedHashMap<>();
        facts.forEach((name, value) -> value.ifPresent(known -> stated.put(name, known)));
        return stated;
    }
}
