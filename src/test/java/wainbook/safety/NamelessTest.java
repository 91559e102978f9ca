package wainbook.safety;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.safety.SafetySaying.NearMissReported;

/** Whoever reports without a name is in no entry, no row of any table, and nothing that is logged. */
@QuarkusTest
@Tag("database")
class NamelessTest {

    private static final Cast REPORTER = Cast.SECOND_AUTHORISED;

    /** The number by itself, the user name and the name; digits of a hash or a fraction of a second are none of them. */
    private static final Pattern LEADS_BACK = Pattern.compile("(?<![0-9a-fA-F.-])" + REPORTER.number()
            + "(?![0-9a-fA-F])|" + REPORTER.user() + "|" + REPORTER.fullName());

    @Inject
    DataSource database;

    @Inject
    Ledger ledger;

    private OnRecord bus;

    @BeforeEach
    void a_bus_in_the_yard() {
        Cast.assemble();
        bus = OnRecord.accepted();
    }

    @Test
    void nothing_in_ledger_tables_or_log_leads_back_to_whoever_touched_words_and_stopped() throws SQLException {
        Browsing browser = Browsing.as(REPORTER);
        Map<String, Object> form = browser.form("/orders/" + bus.number());
        form.put("nameless", "yes");
        form.put("place", "yes");
        form.put("words", "the sling slipped");
        Map<String, List<String>> before = mentions();
        var log = new Listening();
        Logger.getLogger("").addHandler(log);
        String path;
        try {
            path = location(browser.send("/safety/near-miss", form));
            Map<String, Object> words = browser.form(path);
            words.put("words", "it was the hook");
            words.put("nameless", "yes");
            assertThat(browser.send(path + "/words", words).statusCode()).isEqualTo(303);
            assertThat(browser.send("/safety/stop", form).statusCode()).isEqualTo(303);
            REPORTER.asks()
                    .header("Wainbook-Station", "ST-1")
                    .header("Wainbook-Device-Time", "2026-03-10T09:00:00Z")
                    .contentType("application/json")
                    .body(Map.of("id", UUID.randomUUID(), "nameless", true, "words", "told by a script"))
                    .post("/api/v1/safety/near-misses")
                    .then()
                    .statusCode(201);
        } finally {
            Logger.getLogger("").removeHandler(log);
        }
        assertThat(mentions()).isEqualTo(before);
        assertThat(log.said).noneMatch(line -> LEADS_BACK.matcher(line).find());

        assertThat(browser.page(path)).contains("the sling slipped", "without a name", bus.number());
        List<Entry> told = ledger.history(Subject.works()).entries().stream()
                .filter(entry -> entry.moment().who().equals(Nameless.SPEAKER))
                .toList();
        assertThat(told).hasSizeGreaterThanOrEqualTo(3).allSatisfy(entry -> {
            assertThat(entry.moment().deviceAt()).isEmpty();
            assertThat(entry.moment().station()).isEmpty();
        });
    }

    @Test
    void without_the_tick_for_the_place_a_report_keeps_the_time_alone() {
        Browsing browser = Browsing.as(REPORTER);
        Map<String, Object> form = browser.form("/orders/" + bus.number());
        form.put("nameless", "yes");
        String path = location(browser.send("/safety/near-miss", form));
        assertThat(browser.page(path)).contains("place not said").doesNotContain(bus.number());
    }

    @Test
    void a_second_touch_writes_nothing_more_and_one_with_other_words_is_kept_as_one_more() {
        Browsing browser = Browsing.as(REPORTER);
        Map<String, Object> form = browser.form("/safety");
        long before = reports();
        String first = location(browser.send("/safety/near-miss", form));
        assertThat(location(browser.send("/safety/near-miss", form))).isEqualTo(first);
        assertThat(reports()).isEqualTo(before + 1);
        form.put("nameless", "yes");
        assertThat(location(browser.send("/safety/near-miss", form))).isNotEqualTo(first);
        assertThat(reports()).isEqualTo(before + 2);
    }

    private long reports() {
        return ledger.history(Subject.works()).saying(NearMissReported.class).count();
    }

    private static String location(Response answer) {
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.header("Location").replaceFirst("^.*?(?=/safety/)", "");
    }

    /** Every row of every table that names the reporter. */
    private Map<String, List<String>> mentions() throws SQLException {
        var found = new TreeMap<String, List<String>>();
        try (Connection connection = database.getConnection();
                ResultSet tables = connection
                        .getMetaData()
                        .getTables(null, connection.getSchema(), null, new String[] {"BASE TABLE", "TABLE"})) {
            while (tables.next()) {
                String table = tables.getString("TABLE_NAME");
                found.put(table, mentions(connection, table));
            }
        }
        assertThat(found.values()).as("the reporter is in the works at all").anyMatch(rows -> !rows.isEmpty());
        return found;
    }

    private static List<String> mentions(Connection connection, String table) throws SQLException {
        var rows = new ArrayList<String>();
        try (Statement statement = connection.createStatement();
                ResultSet all = statement.executeQuery("select * from \"" + table + "\"")) {
            while (all.next()) {
                var row = new StringBuilder();
                for (int i = 1; i <= all.getMetaData().getColumnCount(); i++) {
                    row.append(all.getString(i)).append('\n');
                }
                if (LEADS_BACK.matcher(row).find()) {
                    rows.add(row.toString());
                }
            }
        }
        rows.sort(null);
        return rows;
    }

    private static final class Listening extends Handler {
        private final List<String> said = new ArrayList<>();

        Listening() {
            setLevel(Level.ALL);
        }

        @Override
        public synchronized void publish(LogRecord entry) {
            said.add(entry.getMessage() + " " + Arrays.toString(entry.getParameters()));
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
