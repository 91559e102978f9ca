package wainbook.trace;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Entry;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/** From any number to the vehicles and the places in their record. */
@QuarkusTest
class TraceTest {

    @Inject
    Releases releases;

    private OnRecord bus;
    private String unique;

    @BeforeEach
    void a_bus_on_the_line() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
        unique = UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
    }

    @AfterEach
    void the_station_is_free_again() {
        bus.out();
    }

    @Test
    void a_vehicle_is_found_by_vin_and_registration_in_small_letters_and_without_blanks() {
        assertThat(orders(bus.vin().toLowerCase(java.util.Locale.ROOT))).containsExactly(bus.number());
        String registration = found(bus.vin()).getString("vehicles[0].registration");
        assertThat(registration).contains(" ");
        assertThat(orders(registration.replace(" ", ""))).contains(bus.number());
        assertThat(orders(bus.number())).containsExactly(bus.number());
    }

    @Test
    void a_serial_leads_to_its_entry_with_who_what_and_verdict() {
        Entry entry = bus.say(new SerialRead(about(), basis(), "pack", "PK-" + unique));
        JsonPath found = found("pk-" + unique);
        assertThat(found.getString("vehicles[0].order")).isEqualTo(bus.number());
        assertThat(found.getList("vehicles[0].places")).hasSize(1);
        assertThat(found.getLong("vehicles[0].places[0].entry")).isEqualTo(entry.number());
        assertThat(found.getString("vehicles[0].places[0].who")).isEqualTo(Cast.WORKS_ENGINEER.number());
        assertThat(found.getString("vehicles[0].places[0].what")).contains("Strip and decommission");
        assertThat(found.getBoolean("vehicles[0].places[0].passed")).isTrue();
        assertThat(page("PK-" + unique))
                .contains("/orders/" + bus.number() + "#entry-" + entry.number(), "passed", "Wes Enright");
    }

    @Test
    void a_beginning_of_three_characters_finds_and_one_of_two_does_not() {
        bus.say(new LotUsed(about(), basis(), "sealant", unique + "-A"));
        bus.say(new LotUsed(about(), basis(), "sealant", unique + "-B"));
        assertThat(found(unique).getList("vehicles[0].places")).hasSize(2);
        assertThat(found(unique + "-B").getList("vehicles[0].places")).hasSize(1);
        assertThat(orders(unique.substring(0, 2))).isEmpty();
        assertThat(page(unique.substring(0, 2))).contains("Type three characters or more");
    }

    @Test
    void what_a_search_language_means_by_a_sign_is_only_that_sign() {
        bus.say(new LotUsed(about(), basis(), "sealant", unique + "_X!5%"));
        assertThat(found(unique + "_X!5%").getList("vehicles")).hasSize(1);
        assertThat(orders(unique + "%X")).isEmpty();
        assertThat(orders("___")).isEmpty();
        assertThat(orders("%%%")).isEmpty();
    }

    @Test
    void an_instrument_and_a_joint_are_found_where_they_were_used() {
        Joint joint = releases.joints().get(0);
        var used = new Basis(
                Condition.NONE,
                Optional.empty(),
                Optional.of(new Used("TW-" + unique, java.time.LocalDate.of(2030, 1, 1))));
        Entry entry = bus.say(new Tightened(
                about(),
                used,
                joint.code(),
                JointClass.B,
                joint.torque(),
                Optional.empty(),
                Optional.empty(),
                List.of(new BigDecimal("1")),
                List.of(),
                List.of(1),
                Verdict.FAIL));
        assertThat(found("TW-" + unique).getLong("vehicles[0].places[0].entry")).isEqualTo(entry.number());
        assertThat(page("TW-" + unique)).contains("failed", "instrument");
        assertThat(orders(joint.code())).contains(bus.number());
    }

    @Test
    void who_recorded_is_found_and_more_than_a_page_shows_is_counted() {
        for (int i = 0; i < Tracing.PLACES; i++) {
            bus.say(new LotUsed(about(), basis(), "sealant", unique + "-" + i));
        }
        JsonPath found = found(unique);
        assertThat(found.getLong("vehicles[0].more")).isZero();
        assertThat(found.getList("vehicles[0].places.entry", Long.class))
                .hasSize(Tracing.PLACES)
                .isSortedAccordingTo(java.util.Comparator.reverseOrder());
        bus.say(new LotUsed(about(), basis(), "sealant", unique + "-last"));
        assertThat(found(unique).getLong("vehicles[0].more")).isEqualTo(1);
        assertThat(page(unique)).contains("1 more entry in its record");
        assertThat(orders(Cast.WORKS_ENGINEER.number())).contains(bus.number());
    }

    @Test
    void a_voided_entry_is_still_found_and_says_so() {
        Entry entry = bus.say(new SerialRead(about(), basis(), "pack", "PV-" + unique));
        bus.say(new Voided(entry.id(), about().item(), "Read from the wrong pack"));
        assertThat(found("PV-" + unique).getBoolean("vehicles[0].places[0].voided"))
                .isTrue();
        assertThat(page("PV-" + unique)).contains("voided");
    }

    @Test
    void the_file_has_the_same_lines_and_an_empty_box_finds_nothing() {
        bus.say(new SerialRead(about(), basis(), "pack", "PC-" + unique));
        String file = Browsing.as(Cast.AUDITOR).page("/trace.csv?q=PC-" + unique);
        assertThat(file).contains(bus.number(), "PC-" + unique, Cast.WORKS_ENGINEER.number());
        assertThat(file.lines()).hasSize(2);
        assertThat(page("")).contains("name=\"q\"").doesNotContain("Nothing on record");
        assertThat(page("NOT-ON-RECORD")).contains("Nothing on record has the number NOT-ON-RECORD");
    }

    private About about() {
        String sheet = releases.route("BUS-12M")
                .orElseThrow()
                .leg("strip")
                .orElseThrow()
                .checkSheet();
        return new About(
                "strip", sheet, 1, releases.sheet(sheet, 1).items().get(0).key(), List.of());
    }

    private static Basis basis() {
        return new Basis(Condition.NONE, Optional.empty(), Optional.empty());
    }

    private static JsonPath found(String query) {
        return Cast.AUDITOR
                .asks()
                .queryParam("q", query)
                .get("/api/v1/trace")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static List<String> orders(String query) {
        return found(query).getList("vehicles.order");
    }

    private static String page(String query) {
        return Browsing.as(Cast.AUDITOR)
                .page("/trace?q=" + java.net.URLEncoder.encode(query, java.nio.charset.StandardCharsets.UTF_8));
    }
}
