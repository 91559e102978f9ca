package wainbook.handover.road;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.act.Moment;
import wainbook.handover.road.RoadEvidence.Line;
import wainbook.handover.road.RoadEvidence.Sort;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.FactStated;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState;
import wainbook.station.ItemState.Status;
import wainbook.station.SheetLine;

/** What a release for the road rests on, and what ends it. */
class RoadEvidenceTest {

    @ParameterizedTest
    @EnumSource(Status.class)
    void only_what_stands_as_passed_holds_and_what_comes_after_the_road_test_may_be_open(Status status) {
        boolean passed = status == Status.PASSED;
        boolean notYet = status == Status.OPEN || status == Status.WAITING || status == Status.HANDED_ON;
        assertThat(line("brake", status, "a", false).holds()).isEqualTo(passed);
        assertThat(line("check", status, "a", true).holds()).isEqualTo(passed || notYet);
    }

    @Test
    void what_does_not_apply_to_the_vehicle_is_no_evidence() {
        var evidence = new RoadEvidence(List.of(line("brake", Status.NOT_APPLICABLE, "a", false)));
        assertThat(evidence.lines()).isEmpty();
        assertThat(evidence.hasNothingOf(Sort.BRAKES)).isTrue();
    }

    @Test
    void work_given_to_a_later_stage_counts_there() {
        Line given = line("lugs", Status.RE_SEQUENCED, "a", false);
        assertThat(new RoadEvidence(List.of(given)).wanting()).hasSize(1);
        assertThat(new RoadEvidence(List.of(given, line("lugs", Status.OPEN, "a", false))).wanting())
                .hasSize(1);
        assertThat(new RoadEvidence(List.of(given, line("lugs", Status.PASSED, "a", false))).wanting())
                .isEmpty();
    }

    @Test
    void doing_an_item_again_voiding_it_or_disturbing_it_changes_the_fingerprint() {
        String signed = print(line("brake", Status.PASSED, "a", false));
        assertThat(print(line("brake", Status.PASSED, "a", false))).isEqualTo(signed);
        assertThat(print(line("brake", Status.PASSED, "b", false))).isNotEqualTo(signed);
        assertThat(print(line("brake", Status.OPEN, "a", false))).isNotEqualTo(signed);
        assertThat(print(line("brake", Status.STALE, "a", false))).isNotEqualTo(signed);
    }

    @Test
    void a_check_after_the_road_test_changes_it_only_by_failing() {
        String signed = print(line("check", Status.OPEN, "a", true));
        assertThat(print(line("check", Status.WAITING, "a", true))).isEqualTo(signed);
        assertThat(print(line("check", Status.PASSED, "a", true))).isEqualTo(signed);
        assertThat(print(line("check", Status.FAILED, "a", true))).isNotEqualTo(signed);
        assertThat(print(line("check", Status.NONCONFORMING, "a", true))).isNotEqualTo(signed);
    }

    @Test
    void it_knows_whose_entries_it_rests_on() {
        var evidence = new RoadEvidence(
                List.of(line("brake", Status.PASSED, "a", false), line("park", Status.PASSED, "b", false)));
        assertThat(evidence.by("W-1008")).isEqualTo(2);
        assertThat(evidence.by("W-1009")).isZero();
    }

    private static String print(Line... lines) {
        return new RoadEvidence(Arrays.asList(lines)).fingerprint();
    }

    private static Line line(String key, Status status, String hash, boolean after) {
        var item = new CheckItem(
                key,
                "Look at the brakes",
                new Ask.Confirm(Optional.empty()),
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                3,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                1,
                Optional.empty());
        var moment = Moment.of("W-1008", Instant.parse("2026-03-10T09:00:00Z"));
        var entry =
                new Entry(new UUID(0, 1), Subject.workOrder("WB-1"), 1, moment, hash, new FactStated("category", "M3"));
        Optional<Entry> passing = status == Status.PASSED ? Optional.of(entry) : Optional.empty();
        return new Line(
                "final",
                Sort.BRAKES,
                new ItemState(
                        new SheetLine("FINAL", 1, item), status, List.of(), 0, passing, Optional.empty(), List.of()),
                after);
    }
}
