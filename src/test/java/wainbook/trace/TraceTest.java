package wainbook.trace;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.HandoverSaying.State;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.NewerTables;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.process.ProcessSaying.JointsReleased;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Held;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.SoftwareRead;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;
import wainbook.trace.campaign.CampaignSaying.Match;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;
import wainbook.trace.campaign.scope.Scope;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.note.Note;

/** From any number to the vehicles and the places in their record. */
@QuarkusTest
class TraceTest {

    @Inject
    Releases releases;

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    @Inject
    NewerTables newer;

    @Inject
    EntityManager entities;

    @Inject
    EvidenceFiles files;

    @Inject
    Scope scope;

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
    void software_and_a_check_sheet_with_its_revision_lead_to_the_vehicle() {
        bus.say(new SoftwareRead(about(), basis(), "BMS", "7." + unique, "7.0.3", Verdict.FAIL));
        assertThat(orders("7." + unique)).containsExactly(bus.number());
        assertThat(orders("bms 7." + unique)).containsExactly(bus.number());
        assertThat(found("7." + unique).getString("vehicles[0].places[0].code")).isEqualTo("BMS 7." + unique);
        assertThat(orders(about().sheet() + "/1")).contains(bus.number());
        assertThat(orders(about().sheet() + "/99")).isEmpty();
    }

    @Test
    void a_document_by_its_number_and_its_text_by_its_revision_lead_to_the_vehicle_and_back() {
        EvidenceFile file = files.keep(unique.getBytes(StandardCharsets.UTF_8), "application/pdf");
        Entry issued = bus.say(new Issued(
                "weight-record", "Weight record", 1, 7, file, new Held("SIGNATORY", 1, LocalDate.of(2030, 1, 1))));
        bus.say(new DocumentNoted(
                "GB-03",
                "Certificate",
                "GB",
                2,
                State.IN_HAND,
                "IVA-" + unique,
                Optional.empty(),
                Optional.empty(),
                ""));
        assertThat(orders(bus.number() + "/weight-record/1")).containsExactly(bus.number());
        assertThat(found(bus.number() + "/weight-record/1").getLong("vehicles[0].places[0].entry"))
                .isEqualTo(issued.number());
        assertThat(orders("weight-record/7")).contains(bus.number());
        assertThat(orders("weight-record/8")).doesNotContain(bus.number());
        assertThat(orders("iva-" + unique)).containsExactly(bus.number());
        assertThat(Browsing.as(Cast.AUDITOR).page("/trace/vehicle/" + bus.number()))
                .contains("Texts of documents and their revisions", "weight-record/7", "IVA-" + unique);
    }

    @Test
    void a_joint_in_a_revision_leads_to_the_vehicles_it_was_tightened_on_and_back() {
        Joint joint = releases.joints().get(0);
        int revision = ledger.history(Subject.works())
                .last(JointsReleased.class)
                .orElseThrow()
                .revision();
        Entry entry = bus.say(new Tightened(
                about(),
                basis(),
                joint.code(),
                JointClass.B,
                joint.torque(),
                Optional.empty(),
                Optional.empty(),
                List.of(new BigDecimal("1")),
                List.of(),
                List.of(1),
                Verdict.FAIL));
        assertThat(orders(joint.code() + "/" + revision)).contains(bus.number());
        assertThat(orders("joints/" + revision)).contains(bus.number());
        assertThat(orders(joint.code() + "/" + (revision + 1))).isEmpty();
        assertThat(orders(releases.joints().get(1).code() + "/" + revision)).doesNotContain(bus.number());
        assertThat(found(joint.code() + "/" + revision)
                        .getString("vehicles.find { it.order == '" + bus.number() + "' }.places[0].code"))
                .isEqualTo(joint.code() + "/" + revision);
        assertThat(found(joint.code() + "/" + revision)
                        .getLong("vehicles.find { it.order == '" + bus.number() + "' }.places[0].entry"))
                .isEqualTo(entry.number());
        assertThat(Browsing.as(Cast.AUDITOR).page("/trace/vehicle/" + bus.number()))
                .contains("Joints and their revisions", joint.code() + "/" + revision, "JOINTS/" + revision);
        Query both = new Query(
                Match.ANY,
                List.of(new Term(
                        Mention.Sort.JOINT_REVISION,
                        joint.code() + "/" + revision,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())));
        assertThat(QuarkusTransaction.requiringNew().call(() -> scope.fits(both, List.of(bus.number()))))
                .isTrue();
        assertThat(QuarkusTransaction.requiringNew().call(() -> scope.fits(both, List.of("NONE"))))
                .isFalse();
    }

    @Test
    void the_note_that_emptied_a_container_leads_to_the_vehicles_whose_waste_was_in_it_and_to_the_container() {
        String label = "C-" + unique;
        String note = "T-" + unique;
        say(
                Labels.subject(label),
                new WasteSaying.ContainerOpened(
                        "13 02 05*", BigDecimal.TEN, WasteSaying.Measure.KG, "Bund", true, true, Optional.empty(), 90));
        bus.say(new WasteSaying.Placed("n1", "Oil", label, "13 02 05*", BigDecimal.ONE));
        Entry collected = say(Labels.subject(label), collected(note));
        JsonPath found = found(note);
        assertThat(found.getString("vehicles[0].order")).isEqualTo(bus.number());
        assertThat(found.getLong("vehicles[0].places[0].entry")).isEqualTo(collected.number());
        assertThat(page(note)).contains("href=\"" + Labels.path(label) + "\"", "waste note");
        assertThat(orders(label)).containsExactly(bus.number());
        assertThat(found(label).getBoolean("vehicles[0].places[0].voided")).isFalse();
        bus.say(new WasteSaying.PlacingVoided("n1", label, "It went into the next drum"));
        assertThat(found(label).getBoolean("vehicles[0].places[0].voided")).isTrue();
    }

    @Test
    void a_vehicle_leads_back_to_everything_its_record_names() {
        bus.say(new SerialRead(about(), basis(), "pack", "PB-" + unique));
        bus.say(new LotUsed(about(), basis(), "sealant", "LT-" + unique));
        bus.say(new LotUsed(about(), basis(), "sealant", "LT-" + unique));
        bus.say(new SoftwareRead(about(), basis(), "BMS", "8." + unique, "7.0.3", Verdict.FAIL));
        String page = Browsing.as(Cast.AUDITOR).page("/trace/vehicle/" + bus.number());
        assertThat(page)
                .contains(
                        "PB-" + unique,
                        "/trace?q=LT-" + unique,
                        "BMS 8." + unique,
                        "Check sheets and their revisions",
                        Cast.WORKS_ENGINEER.number(),
                        bus.vin());
        String file = Browsing.as(Cast.AUDITOR).page("/trace/vehicle/" + bus.number() + "/names.csv");
        assertThat(file.lines().filter(line -> line.contains("LT-" + unique)))
                .singleElement()
                .asString()
                .startsWith(bus.number() + ",lot,LT-" + unique + ",2,");
        assertThat(file.lines().filter(line -> line.contains("BMS 8." + unique)))
                .hasSize(1);
        assertThat(Browsing.as(Cast.AUDITOR).get("/trace/vehicle/NOT-ON-RECORD").statusCode())
                .isEqualTo(404);
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number()))
                .contains("/trace/vehicle/" + bus.number());
    }

    @Test
    void a_vehicle_that_is_found_says_whose_it_is_and_when_it_was_on_the_line() {
        assertThat(found(bus.number()).getString("vehicles[0].operator")).isEqualTo("Vale and Fen Community Buses");
        assertThat(found(bus.number()).getString("vehicles[0].dates.onLine")).isNotNull();
        assertThat(found(bus.number()).getString("vehicles[0].dates.handedOver"))
                .isNull();
        assertThat(page(bus.number())).contains("Onto the line", "/trace/vehicle/" + bus.number());
    }

    @Test
    void after_an_update_what_was_said_before_is_found_by_what_only_the_newer_program_looks_for() {
        bus.say(new SoftwareRead(about(), basis(), "BMS", "9." + unique, "7.0.3", Verdict.FAIL));
        QuarkusTransaction.requiringNew().run(() -> {
            TracedRow.delete("traceSort = ?1", Mention.Sort.SOFTWARE);
            entities.createNativeQuery("update made_by set version = 1 where tables = 'traced'")
                    .executeUpdate();
        });
        assertThat(orders("9." + unique)).isEmpty();
        assertThat(newer.make()).containsExactly("traced");
        assertThat(orders("9." + unique)).containsExactly(bus.number());
        assertThat(newer.make()).isEmpty();
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

    private Collected collected(String code) {
        var checked = new Note.Checked("Carrier", "CR-1", LocalDate.of(2026, 5, 4), Cast.WORKS_ENGINEER.number());
        var note = new Note(
                Note.Sort.of(true),
                code,
                LocalDate.of(2026, 5, 4),
                "Works",
                "29.20",
                "Conversion",
                "13 02 05*",
                "Oil",
                "",
                "HP 14",
                "drum",
                "",
                BigDecimal.ONE,
                Optional.empty(),
                checked,
                "ZZ21",
                checked);
        return new Collected(
                note,
                BigDecimal.ONE,
                List.of(new WasteSaying.Share(bus.number(), "n1", "Oil", BigDecimal.ONE, BigDecimal.ONE)));
    }

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    private Entry say(Subject subject, Saying saying) {
        return ledger.write(
                        new Told(UUID.randomUUID(), List.of(subject), saying.getClass()),
                        Actor.of(Cast.WORKS_ENGINEER.number(), clock),
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons);
                });
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
