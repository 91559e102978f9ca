package wainbook.handover.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.handover.requirement.Requirements;
import wainbook.handover.requirement.RuleSet;

class DifferenceTest {

    private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
    private static final List<String> TRUTHS = List.of(
            "propulsion_changed",
            "chassis_cut_or_drilled",
            "kept_identity",
            "tacho_fitted",
            "tail_lift",
            "lift_fitted_new",
            "packs_new",
            "charge_dc",
            "emission_claim");

    private static DocumentSet set(String name, Map<String, Object> facts) {
        var rules = new Requirements(RuleSet.named(name).orElseThrow());
        return new DocumentSet(
                name,
                1,
                DAY,
                rules.on(DAY, facts).stream()
                        .map(requirement -> Document.of(requirement, Optional.empty(), DAY))
                        .toList());
    }

    private static List<String> ids(List<Difference.Change> changes) {
        return changes.stream().map(change -> change.document().id()).toList();
    }

    private static Optional<Answer> answer(DocumentSet set, String id) {
        return set.document(id).map(document -> document.requirement().answer());
    }

    @Test
    void between_a_set_and_itself_there_is_none() {
        DocumentSet own = set("DE", Map.of("category", "N3"));
        assertThat(Difference.between(own, own)).isEqualTo(new Difference(List.of(), List.of(), List.of()));
    }

    /** Seeds of vehicles of which each fact is so, not so, or not known. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void every_document_that_stands_otherwise_is_told_once(long seed) {
        var draws = new Random(seed);
        var facts = new HashMap<String, Object>();
        facts.put("packs", draws.nextInt(2) * 4);
        TRUTHS.stream().filter(fact -> draws.nextInt(3) > 0).forEach(fact -> facts.put(fact, draws.nextBoolean()));
        DocumentSet own = set("GB", facts);
        DocumentSet other = set("DE", facts);
        var difference = Difference.between(own, other);
        var told = new ArrayList<String>();
        told.addAll(ids(difference.inAddition()));
        told.addAll(ids(difference.becomesQuestion()));
        told.addAll(ids(difference.fallsAway()));
        assertThat(told).doesNotHaveDuplicates();
        var all = new HashSet<String>();
        Stream.of(own, other).flatMap(set -> set.documents().stream()).forEach(document -> all.add(document.id()));
        for (String id : all) {
            Answer before = answer(own, id).orElse(Answer.NOT_NEEDED);
            Answer after = answer(other, id).orElse(Answer.NOT_NEEDED);
            assertThat(told.contains(id)).as(id).isEqualTo(before != after);
        }
    }
}
