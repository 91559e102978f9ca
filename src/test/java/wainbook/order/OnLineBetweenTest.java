package wainbook.order;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Cast;
import wainbook.house.OnRecord;

/** Which vehicles were on the line at some time of a period. */
@QuarkusTest
@Tag("database")
class OnLineBetweenTest {

    @Inject
    Clock clock;

    private OnRecord gone;
    private OnRecord there;
    private OnRecord waits;
    private Instant before;
    private Instant between;
    private Instant after;

    @BeforeEach
    void one_has_left_one_is_there_and_one_waits() {
        Cast.assemble();
        before = clock.instant();
        gone = OnRecord.accepted().at("strip", "ST-1");
        gone.out();
        between = clock.instant();
        there = OnRecord.accepted().at("strip", "ST-1");
        waits = OnRecord.accepted();
        after = clock.instant();
    }

    @AfterEach
    void the_station_is_free_again() {
        there.out();
    }

    @Test
    void a_vehicle_is_found_for_as_long_as_it_was_there() {
        assertThat(found(before, after)).contains(gone.number(), there.number()).doesNotContain(waits.number());
        assertThat(found(between, after)).contains(there.number()).doesNotContain(gone.number());
        assertThat(found(before, between)).contains(gone.number()).doesNotContain(there.number());
        assertThat(found(before.minus(Duration.ofDays(9)), before)).doesNotContain(gone.number(), there.number());
        assertThat(found(after, after.plus(Duration.ofDays(1)))).contains(there.number());
    }

    /** As in a works whose rows are older than the columns. */
    @Test
    void a_row_that_does_not_know_is_found_where_it_may_have_been_there() {
        QuarkusTransaction.requiringNew()
                .run(() -> WorkOrderRow.update(
                        "cameOnLine = null, leftLine = null where number in ?1",
                        List.of(gone.number(), there.number(), waits.number())));

        assertThat(found(before, after)).contains(gone.number(), there.number()).doesNotContain(waits.number());
        assertThat(found(after, after.plus(Duration.ofDays(1))))
                .contains(there.number())
                .doesNotContain(gone.number());
    }

    private static List<String> found(Instant from, Instant to) {
        return QuarkusTransaction.requiringNew()
                .call(() -> WorkOrderRow.onLineBetween(from, to).stream()
                        .map(row -> row.number)
                        .toList());
    }
}
