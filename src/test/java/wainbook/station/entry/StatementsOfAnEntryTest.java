package wainbook.station.entry;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.ledger.Entry;
import wainbook.station.Reply;

/** A technician waits for every entry, so that recording one costs few statements, however long the record is. */
@QuarkusTest
@Tag("database")
class StatementsOfAnEntryTest {

    private static final int MOST = 8;

    @Inject
    Recording recording;

    @Inject
    SessionFactory sessions;

    @Inject
    Clock clock;

    private Statistics statistics;
    private Donor donor;

    @BeforeEach
    void a_donor_at_its_survey() {
        Cast.assemble();
        donor = Donor.received();
        statistics = sessions.getStatistics();
        assertThat(statistics.isStatisticsEnabled()).isTrue();
        record("hazards", Optional.empty(), Reply.with().words("none").build());
    }

    @Test
    void a_finding_takes_at_most_eight() {
        assertThat(counted(() -> record(
                        "frame", Optional.empty(), Reply.with().choice("Sound").build())))
                .isBetween(1L, (long) MOST);
    }

    @Test
    void a_reading_with_an_instrument_takes_at_most_eight() {
        Reply reading = Reply.with().reading(new BigDecimal("4100")).build();
        assertThat(counted(() -> record("received-front", Optional.of("WP-01"), reading)))
                .isBetween(1L, (long) MOST);
    }

    @Test
    void a_table_of_readings_takes_no_more_than_a_single_one() {
        Reply table = Reply.with()
                .cells(List.of("6", "6", "7", "7", "8", "8", "8", "8").stream()
                        .map(BigDecimal::new)
                        .toList())
                .build();
        assertThat(counted(() -> record("tyres", Optional.empty(), table))).isBetween(1L, (long) MOST);
    }

    @Test
    void a_serial_takes_at_most_eight() {
        Reply serial = Reply.with().serial("E-" + donor.number()).build();
        assertThat(counted(() -> record("engine-number", Optional.empty(), serial)))
                .isBetween(1L, (long) MOST);
    }

    @Test
    void the_same_entry_sent_again_writes_nothing_and_reads_little() {
        var once = asked("frame", Optional.empty(), Reply.with().choice("Sound").build());
        done(recording.record(once, technician()));
        long inserted = statistics.getEntityInsertCount();
        assertThat(counted(() -> done(recording.record(once, technician())))).isBetween(1L, 4L);
        assertThat(statistics.getEntityInsertCount()).isEqualTo(inserted);
    }

    private long counted(Runnable act) {
        long before = statistics.getPrepareStatementCount();
        act.run();
        return statistics.getPrepareStatementCount() - before;
    }

    private void record(String item, Optional<String> instrument, Reply reply) {
        done(recording.record(asked(item, instrument, reply), technician()));
    }

    private Recording.ToRecord asked(String item, Optional<String> instrument, Reply reply) {
        return new Recording.ToRecord(UUID.randomUUID(), donor.number(), item, instrument, reply);
    }

    private static void done(Outcome<Entry> outcome) {
        outcome.fold(entry -> entry, reasons -> {
            throw new AssertionError(reasons);
        });
    }

    private Actor technician() {
        return Actor.of(Cast.TECHNICIAN.number(), clock);
    }
}
