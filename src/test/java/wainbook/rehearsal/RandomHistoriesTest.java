package wainbook.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.ledger.ReadTables;
import wainbook.ledger.Rebuild;
import wainbook.ledger.verification.Verify;
import wainbook.rehearsal.chance.Odds;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.setup.DemoWorks;

/** Whole ways of vehicles, full of failures, holds, voids, refusals and work carried over, played by chance. */
@QuarkusTest
@Tag("database")
class RandomHistoriesTest {

    @Inject
    Acts acts;

    @Inject
    DemoWorks demo;

    @Inject
    Rebuild rebuild;

    @Inject
    Verify verify;

    @Inject
    DataSource database;

    @Inject
    Clock clock;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void tables_made_again_are_those_made_while_it_happened(long seed) throws SQLException {
        var works = demo.files().fold(whole -> whole, faults -> null);
        Scenario scenario = Scenario.beside(demo.folder()).orElseThrow().seeded(seed);
        var playing = new Playing(acts, works, scenario, Odds.rough(), clock.instant(), "R" + seed + "-");
        new BesideTheLine(playing).vehicles();
        new PlayedPast(playing).vehicle(1);

        Map<String, List<String>> live = ReadTables.in(database);
        assertThat(live.get("work_order")).as("vehicles of seed " + seed).hasSizeGreaterThanOrEqualTo(5);
        new BesideTheLine(playing).vehicles();
        new PlayedPast(playing).vehicle(1);
        assertThat(ReadTables.in(database))
                .as("played again at a restart, seed " + seed)
                .isEqualTo(live);
        rebuild.everything();
        assertThat(ReadTables.in(database))
                .as("tables made again, seed " + seed)
                .isEqualTo(live);
        assertThat(verify.everything().findings()).as("verified, seed " + seed).isEmpty();
    }
}
