package wainbook.line.balance.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.history.Finished;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.KindShare;
import wainbook.line.balance.content.Content.Place;

/** Buses and trucks at two stages; each sheet plans a hundred minutes at the first. */
class RecordedTest {

    private static final Content CONTENT = new Content(
            List.of(new Place("strip", 1, "Strip", 1), new Place("fit", 2, "Fit", 1)),
            List.of(new KindShare("bus", 1), new KindShare("truck", 1)),
            List.of(item("strip", "a", 10), item("strip", "b", 90), item("fit", "c", 40)),
            Optional.empty());

    /** 80, 100, 130, 150, 400 over 100: the middle one is 1.3. */
    @Test
    void five_stays_of_the_kind_make_its_items_longer_by_the_median() {
        var recorded = new Recorded(stays("bus", "strip", 80, 400, 130, 100, 150));
        Content timed = CONTENT.timed(recorded);

        assertThat(recorded.pace("strip", "bus")).isEqualTo(new Pace("strip", "bus", Pace.Ground.KIND, 1.3, 5));
        assertThat(timed.load("strip", "bus")).isEqualTo(130);
        assertThat(timed.items().get(0).minutes()).containsEntry("bus", 13.0);
        assertThat(timed.load("fit", "bus")).isEqualTo(40);
    }

    @Test
    void four_of_the_kind_are_too_few_and_those_of_all_kinds_speak() {
        var recorded = new Recorded(Stream.concat(
                        stays("bus", "strip", 200, 200, 200, 200).stream(), stays("truck", "strip", 50, 50).stream())
                .toList());

        assertThat(recorded.pace("strip", "truck")).isEqualTo(new Pace("strip", "truck", Pace.Ground.STAGE, 2, 6));
    }

    @Test
    void four_in_all_leave_the_plan_as_it_is() {
        var recorded = new Recorded(stays("bus", "strip", 200, 200, 200, 200));

        assertThat(recorded.pace("strip", "bus")).isEqualTo(new Pace("strip", "bus", Pace.Ground.PLANNED, 1, 4));
        assertThat(CONTENT.timed(recorded)).isEqualTo(CONTENT);
    }

    @Test
    void stays_at_another_stage_say_nothing_of_this_one() {
        var recorded = new Recorded(stays("bus", "fit", 200, 200, 200, 200, 200));

        assertThat(recorded.pace("strip", "bus").ground()).isEqualTo(Pace.Ground.PLANNED);
        assertThat(CONTENT.timed(recorded).load("fit", "bus")).isEqualTo(80);
    }

    /** Each stay is set against the sheet of its own time. */
    @Test
    void a_stay_counts_against_the_plan_it_was_built_by() {
        List<Finished> older = IntStream.range(0, 5)
                .mapToObj(i -> new Finished("V" + i, "bus", "strip", 100, 50))
                .toList();

        assertThat(new Recorded(older).pace("strip", "bus").factor()).isEqualTo(2);
    }

    @Test
    void minutes_are_told_to_a_tenth_and_never_vanish() {
        var recorded = new Recorded(stays("bus", "strip", 0.1, 0.1, 0.1, 0.1, 0.1));

        assertThat(CONTENT.timed(recorded).items().get(0).minutes()).containsEntry("bus", 0.1);
    }

    @Test
    void the_paces_go_along_the_line_for_each_kind_that_has_work_there() {
        assertThat(CONTENT.paces(Recorded.NOTHING))
                .extracting(pace -> pace.stage() + " " + pace.kind() + " " + pace.records())
                .containsExactly("strip bus 0", "strip truck 0", "fit bus 0", "fit truck 0");
    }

    private static List<Finished> stays(String kind, String stage, double... minutes) {
        return IntStream.range(0, minutes.length)
                .mapToObj(i -> new Finished(kind + i, kind, stage, minutes[i], 100))
                .toList();
    }

    private static Item item(String stage, String key, double minutes) {
        return new Item(
                stage + "/" + key, stage, key, "Do " + key, Map.of("bus", minutes, "truck", minutes), List.of(), false);
    }
}
