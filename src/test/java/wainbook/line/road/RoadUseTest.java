package wainbook.line.road;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.LineSaying.RoadReleaseEnded;
import wainbook.line.LineSaying.RoadReleased;

/** When a vehicle is released for the road, and when it has proved itself there. */
class RoadUseTest {

    @Test
    void nothing_said_is_no_release() {
        RoadUse use = use();
        assertThat(use.inForce()).isEmpty();
        assertThat(use.next()).isEqualTo(1);
        assertThat(use.provedOnTheRoad()).isFalse();
    }

    @Test
    void a_release_is_in_force_until_a_person_ends_it() {
        assertThat(use(released(1)).inForce()).isPresent();
        assertThat(use(released(1), new RoadReleaseEnded(1, "")).inForce()).isEmpty();
    }

    @Test
    void a_drive_that_finds_something_ends_it_and_proves_nothing() {
        RoadUse use = use(released(1), driven(1, false));
        assertThat(use.inForce()).isEmpty();
        assertThat(use.provedOnTheRoad()).isFalse();
        assertThat(use(released(1), driven(1, true)).inForce()).isPresent();
    }

    @Test
    void the_last_drive_counts() {
        assertThat(use(released(1), driven(1, false), released(2), driven(2, true))
                        .provedOnTheRoad())
                .isTrue();
        assertThat(use(released(1), driven(1, true), driven(1, false)).provedOnTheRoad())
                .isFalse();
    }

    @Test
    void the_next_release_takes_the_place_of_the_one_before() {
        RoadUse use = use(released(1), released(2));
        assertThat(use.inForce().orElseThrow().number()).isEqualTo(2);
        assertThat(use.releases().get(0).ended()).isPresent();
    }

    private static RoadReleased released(int number) {
        return new RoadReleased(number, "f".repeat(64), "W-1006", List.of(), "114", "20417", List.of());
    }

    private static RoadDriven driven(int release, boolean fit) {
        return new RoadDriven(
                release,
                "W-1006",
                "Bypass",
                0,
                100,
                130,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                fit ? "" : "Pulls to the left",
                fit);
    }

    private static RoadUse use(Saying... said) {
        Subject order = Subject.workOrder("WB-1");
        var entries = new ArrayList<Entry>();
        for (Saying saying : said) {
            int number = entries.size() + 1;
            var at = Instant.parse("2026-03-10T09:00:00Z").plusSeconds(number);
            entries.add(new Entry(new UUID(0, number), order, number, Moment.of("W-1008", at), "h" + number, saying));
        }
        return RoadUse.of(new History(order, entries));
    }
}
