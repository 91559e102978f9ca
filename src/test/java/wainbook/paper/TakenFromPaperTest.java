package wainbook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OwnSheet;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Rebuild;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.Chosen;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Verdict;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CompetenceGiven;
import wainbook.works.WorksSaying.CompetenceWithdrawn;
import wainbook.works.WorksSaying.InstrumentRegistered;
import wainbook.works.WorksSaying.InstrumentWithdrawn;

/** Items that were done on paper: printed, typed in, compared, judged as of their time, and marked for ever. */
@QuarkusTest
@Tag("database")
class TakenFromPaperTest {

    @Inject
    Ledger ledger;

    @Inject
    Rebuild rebuild;

    @Inject
    Clock clock;

    @Inject
    DataSource database;

    private Donor donor;
    private String meter;
    private String competence;
    private String form;

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    @BeforeEach
    void a_donor_whose_open_items_are_on_paper() {
        Cast.assemble();
        Cast.INSPECTOR.give("gate-inspection", 1);
        String unique = UUID.randomUUID().toString().substring(0, 8);
        meter = "MM-" + unique;
        competence = "C-" + unique;
        OwnSheet sheet = OwnSheet.released(
                OwnSheet.item(
                        "frame",
                        "Look over the frame",
                        new Ask.Choice(
                                List.of(new Ask.Choice.Option("Sound", true), new Ask.Choice.Option("Cracked", false))),
                        5),
                item("seal", Condition.NONE, competence),
                item("live", Condition.LIVE, "HV"));
        register();
        say(Subject.instrument(meter), Calibrated.certified(today().minusDays(10), today().plusDays(10), "C-1"));
        donor = Donor.received(sheet.route());
        form = printed();
    }

    /** With an item that is measured. */
    private void anotherDonor() {
        donor = Donor.received();
        form = printed();
    }

    private void register() {
        say(
                Subject.instrument(meter),
                new InstrumentRegistered(
                        "weigh-pads",
                        "Pads",
                        "kg",
                        BigDecimal.ZERO,
                        new BigDecimal("9000"),
                        Optional.of(BigDecimal.ONE)));
    }

    @Test
    void what_two_people_bring_over_stands_at_the_vehicle_and_says_where_it_comes_from() {
        Instant done = clock.instant();
        String photograph = photograph();
        transcribe(Cast.SECOND_TECHNICIAN, photograph, line("frame", Cast.TECHNICIAN, done, "choice", "Sound"))
                .then()
                .statusCode(201);
        assertThat(donorsHistory().saying(TakenFromPaper.class)).isEmpty();
        assertThat(keys(agree(Cast.SECOND_TECHNICIAN))).containsExactly("paper.ownTranscription");
        agree(Cast.TEAM_LEADER).then().statusCode(201);

        List<Entry> entries = donorsHistory().entries();
        var paper = (TakenFromPaper) entries.get(entries.size() - 2).saying();
        assertThat(paper.form()).isEqualTo(form);
        assertThat(paper.doer()).isEqualTo(Cast.TECHNICIAN.number());
        assertThat(paper.doneAt()).isEqualTo(done);
        assertThat(paper.transcribedBy()).isEqualTo(Cast.SECOND_TECHNICIAN.number());
        assertThat(paper.comparedBy()).isEqualTo(Cast.TEAM_LEADER.number());
        assertThat(paper.photograph().sha256()).isEqualTo(photograph);
        assertThat(((Chosen) entries.get(entries.size() - 1).saying()).verdict())
                .isEqualTo(Verdict.PASS);

        Cast.AUDITOR.asks().get("/api/v1/paper/" + form).then().body("state", equalTo("ENTERED"));
        Browsing auditor = Browsing.as(Cast.AUDITOR);
        String mark = "from paper " + form;
        assertThat(auditor.page("/station/" + donor.number() + "?item=frame"))
                .contains(mark, "done by Tess Nichols,", "typed in by Sam Tanner, compared by Tom Leary");
        assertThat(auditor.page("/gates/" + donor.number() + "/intake"))
                .contains(mark, "was written on paper " + form + " first", "Tess Nichols (1)");
        assertThat(auditor.page("/orders/" + donor.number()))
                .contains(mark, "by Tess Nichols, typed in by Sam Tanner, compared by Tom Leary");
    }

    @Test
    void sending_any_step_twice_writes_once() {
        var body = transcription(photograph(), line("frame", Cast.TECHNICIAN, clock.instant(), "choice", "Sound"));
        post(Cast.SECOND_TECHNICIAN, "/transcription", body).then().statusCode(201);
        post(Cast.SECOND_TECHNICIAN, "/transcription", body).then().statusCode(200);
        var agreement = Map.of("id", Donor.id(), "transcription", 1, "vehicle", donor.number());
        post(Cast.TEAM_LEADER, "/agreement", agreement).then().statusCode(201);
        long length = donorsHistory().number();
        post(Cast.TEAM_LEADER, "/agreement", agreement).then().statusCode(200);
        assertThat(donorsHistory().number()).isEqualTo(length);
    }

    @Test
    void nobody_who_had_a_hand_in_it_signs_the_gate_and_somebody_else_may() {
        transcribe(
                        Cast.SECOND_INSPECTOR,
                        photograph(),
                        line("frame", Cast.INSPECTOR, clock.instant(), "choice", "Sound"))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER).then().statusCode(201);
        assertThat(gate(Cast.INSPECTOR)).contains("gate.ownWork");
        assertThat(gate(Cast.SECOND_INSPECTOR)).contains("gate.ownWork");
        assertThat(gate(Cast.TEAM_LEADER)).contains("gate.ownWork");
        assertThat(gate(Cast.QUALITY_ENGINEER)).doesNotContain("gate.ownWork");
    }

    @Test
    void a_fail_lands_as_a_fail_and_voiding_it_takes_the_mark_from_nothing() {
        anotherDonor();
        transcribe(
                        Cast.SECOND_TECHNICIAN,
                        photograph(),
                        line("received-front", Cast.TECHNICIAN, clock.instant(), "reading", "7000,5"))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER).then().statusCode(201);
        Entry failed = last(Measured.class);
        assertThat(((Measured) failed.saying()).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(((Measured) failed.saying()).basis().used().orElseThrow().instrument())
                .isEqualTo(meter);
        donor.send(Cast.TECHNICIAN, "/voids", Map.of("id", Donor.id(), "entry", failed.id(), "reason", "wrong pads"))
                .then()
                .statusCode(201);
        rebuild.everything();
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + donor.number()))
                .contains("from paper " + form, "wrong pads");
        assertThat(Browsing.as(Cast.AUDITOR).page("/station/" + donor.number() + "?item=received-front"))
                .contains("from paper " + form, "wrong pads");
    }

    @Test
    void a_containment_that_opens_later_finds_the_reading_by_who_made_it_and_when() throws SQLException {
        anotherDonor();
        Instant done = clock.instant();
        transcribe(
                        Cast.SECOND_TECHNICIAN,
                        photograph(),
                        line("received-front", Cast.TECHNICIAN, done, "reading", "4000"))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER).then().statusCode(201);
        try (Connection connection = database.getConnection();
                PreparedStatement query = connection.prepareStatement(
                        "select person, instrument, at from entry_basis where entry_id = ?")) {
            query.setObject(1, last(Measured.class).id());
            ResultSet row = query.executeQuery();
            assertThat(row.next()).isTrue();
            assertThat(row.getString(1)).isEqualTo(Cast.TECHNICIAN.number());
            assertThat(row.getString(2)).isEqualTo(meter);
            assertThat(row.getObject(3, java.time.OffsetDateTime.class).toInstant())
                    .isEqualTo(done);
        }
    }

    @Test
    void an_instrument_found_wanting_after_it_was_used_leaves_an_observation() {
        anotherDonor();
        Instant done = clock.instant();
        say(Subject.instrument(meter), InstrumentWithdrawn.because("fell off the bench"));
        say(Subject.instrument(meter), Calibrated.certified(today(), today().plusDays(300), "C-2"));
        assertThat(reading(done)).containsExactly("works.instrumentDoubtedSince");
    }

    @Test
    void a_calibration_that_came_after_the_work_does_not_reach_back() {
        anotherDonor();
        register();
        say(Subject.instrument(meter), Calibrated.certified(today().minusDays(400), today().minusDays(30), "C-0"));
        Instant done = clock.instant();
        say(Subject.instrument(meter), Calibrated.certified(today(), today().plusDays(300), "C-2"));
        assertThat(reading(done)).containsExactly("works.instrumentOutOfCalibration");
    }

    @Test
    void a_competence_counts_as_it_stood_when_the_work_was_done() {
        String another = printed();
        say(Subject.person(Cast.TECHNICIAN.number()), given());
        Instant held = clock.instant();
        say(Subject.person(Cast.TECHNICIAN.number()), new CompetenceWithdrawn(competence, "left the course"));
        Instant lost = clock.instant();
        transcribe(Cast.SECOND_TECHNICIAN, photograph(), line("seal", Cast.TECHNICIAN, lost))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER).then().statusCode(201);
        assertThat(((Observed) last(Observed.class).saying()).notCountedFor())
                .containsExactly("works.competenceWithdrawn");
        form = another;
        transcribe(Cast.SECOND_TECHNICIAN, photograph(), line("seal", Cast.TECHNICIAN, held))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER).then().statusCode(201);
        assertThat(sheetState("seal")).isEqualTo("PASSED");
    }

    @Test
    void live_work_is_not_taken_from_paper_and_then_nothing_of_the_form_is() {
        transcribe(
                        Cast.SECOND_TECHNICIAN,
                        photograph(),
                        line("frame", Cast.TECHNICIAN, clock.instant(), "choice", "Sound"),
                        line("live", Cast.TECHNICIAN, clock.instant()))
                .then()
                .statusCode(201);
        assertThat(keys(agree(Cast.TEAM_LEADER))).contains("station.notFromPaper");
        assertThat(donorsHistory().saying(TakenFromPaper.class)).isEmpty();
        post(Cast.TEAM_LEADER, "/sent-back", Map.of("id", Donor.id(), "transcription", 1, "reason", "live work"))
                .then()
                .statusCode(201);
        assertThat(Browsing.as(Cast.AUDITOR).page("/paper/" + form)).contains("Sent back after comparing: live work");
    }

    @Test
    void the_pages_lead_from_the_print_over_the_photograph_to_the_agreement() {
        Browsing writer = Browsing.as(Cast.SECOND_TECHNICIAN);
        String path = "/paper/" + form;
        assertThat(writer.page("/paper")).contains(form, "When the tool is down");
        assertThat(writer.get("/paper?text=" + form.toLowerCase(java.util.Locale.ROOT))
                        .header("Location"))
                .endsWith(path);
        assertThat(writer.page("/paper/print?from=" + number() + "&to=" + number()))
                .contains(
                        form,
                        donor.number(),
                        "Look over the frame",
                        "competence " + competence,
                        "Not on paper. It waits for the tool.",
                        "Paper changes no rule.");
        Map<String, Object> first = writer.form(path + "/transcription");
        assertThat(writer.send(path + "/photograph", first, "", new byte[0], "image/png")
                        .statusCode())
                .isEqualTo(422);
        Response pictured = writer.send(path + "/photograph", first, "paper.png", picture(), "image/png");
        assertThat(pictured.statusCode()).isEqualTo(303);
        String over = pictured.header("Location").replaceFirst("^https?://[^/]+", "");
        Map<String, Object> typed = writer.form(over);
        typed.put("date", today().toString());
        typed.put("item.frame.choice", "Sound");
        typed.put("item.frame.who", Cast.TECHNICIAN.number());
        typed.put("item.frame.time", "half past");
        Response wrong = writer.send(path + "/transcription", typed);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.asString()).contains("half past", "is not a time of day", "value=\"7001\"");
        typed.put("item.frame.time", local(clock.instant()));
        assertThat(writer.send(path + "/transcription", typed).statusCode()).isEqualTo(303);

        Browsing second = Browsing.as(Cast.TEAM_LEADER);
        assertThat(second.page("/matters")).contains(form);
        assertThat(writer.page(path + "/comparison")).contains("You cannot compare what you typed in yourself.");
        assertThat(second.page(path + "/comparison"))
                .contains("Sound", "Tess Nichols", "What will stand at the vehicle");
        Map<String, Object> agreement = second.form(path + "/comparison");
        agreement.put("id", Donor.id());
        assertThat(second.send(path + "/agreement", agreement).statusCode()).isEqualTo(303);
        assertThat(second.page(path)).contains("entered");
        assertThat(sheetState("frame")).isEqualTo("PASSED");
    }

    @Test
    void a_spoiled_form_is_accounted_for_with_its_reason() {
        Browsing leader = Browsing.as(Cast.TEAM_LEADER);
        Map<String, Object> blank = leader.form("/paper");
        blank.put("sort", "ISOLATION");
        blank.put("count", "2");
        assertThat(leader.send("/paper/blank", blank).header("Location")).contains("/paper/print?from=");
        blank.put("id", Donor.id());
        blank.put("count", "51");
        assertThat(leader.send("/paper/blank", blank).statusCode()).isEqualTo(422);
        Map<String, Object> spoiled = leader.form("/paper/" + form);
        spoiled.put("reason", "");
        assertThat(leader.send("/paper/" + form + "/spoiled", spoiled).statusCode())
                .isEqualTo(422);
        spoiled.put("reason", "coffee");
        assertThat(leader.send("/paper/" + form + "/spoiled", spoiled).statusCode())
                .isEqualTo(303);
        assertThat(leader.page("/paper/" + form)).contains("Spoiled: coffee");
        assertThat(keys(transcribe(
                        Cast.TECHNICIAN,
                        photograph(),
                        line("frame", Cast.TECHNICIAN, clock.instant(), "choice", "Sound"))))
                .containsExactly("paper.spoiledOne");
        assertThat(leader.get("/paper.csv").asString()).contains(form + ",ITEMS," + donor.number() + ",SPOILED");
    }

    /** What a reading of an axle that is well within its limits is not counted for. */
    private List<String> reading(Instant done) {
        transcribe(
                        Cast.SECOND_TECHNICIAN,
                        photograph(),
                        line("received-front", Cast.TECHNICIAN, done, "reading", "4000"))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER).then().statusCode(201);
        assertThat(donorsHistory().saying(Measured.class)).isEmpty();
        var kept = (Observed) last(Observed.class).saying();
        assertThat(kept.readings()).containsExactly(new BigDecimal("4000"));
        return kept.notCountedFor();
    }

    private String printed() {
        return PaperForm.code(printed(Sort.ITEMS));
    }

    private int printed(Sort sort) {
        Cast.TEAM_LEADER
                .asks()
                .contentType("application/json")
                .body(Map.of("id", Donor.id(), "sort", sort, "vehicles", List.of(donor.number())))
                .post("/api/v1/paper/for-vehicles")
                .then()
                .statusCode(201);
        return PaperForms.of(ledger.history(Subject.works())).next() - 1;
    }

    private int number() {
        return Integer.parseInt(form.substring(2));
    }

    private Response transcribe(Cast who, String photograph, Map<?, ?>... lines) {
        return post(who, "/transcription", transcription(photograph, lines));
    }

    private Map<String, Object> transcription(String photograph, Map<?, ?>... lines) {
        return Map.of("id", Donor.id(), "vehicle", donor.number(), "photograph", photograph, "lines", List.of(lines));
    }

    private Response agree(Cast who) {
        int transcription = PaperForms.of(ledger.history(Subject.works()))
                .code(form)
                .orElseThrow()
                .transcribed()
                .size();
        return post(
                who, "/agreement", Map.of("id", Donor.id(), "transcription", transcription, "vehicle", donor.number()));
    }

    private Map<String, Object> line(String item, Cast doer, Instant done, String... typed) {
        var line = new HashMap<String, Object>();
        line.put("item", item);
        line.put("doer", doer.number());
        line.put("doneAt", done.toString());
        if (item.equals("received-front")) {
            line.put("instrument", meter);
        }
        if (typed.length > 0) {
            line.put("typed", List.of(Map.of("name", typed[0], "value", typed[1])));
        }
        return line;
    }

    private Response post(Cast who, String path, Map<String, ?> body) {
        return who.asks().contentType("application/json").body(body).post("/api/v1/paper/" + form + path);
    }

    private static String photograph() {
        return Cast.TECHNICIAN
                .asks()
                .contentType("image/png")
                .body(picture())
                .post("/api/v1/paper/photographs")
                .then()
                .statusCode(200)
                .extract()
                .path("sha256");
    }

    /** No two photographs are alike. */
    private static byte[] picture() {
        return UUID.randomUUID().toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    private List<String> gate(Cast who) {
        return who.asks()
                .get("/api/v1/orders/" + donor.number() + "/gates/intake")
                .jsonPath()
                .getList("against.key");
    }

    private String sheetState(String item) {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + donor.number() + "/sheet")
                .jsonPath()
                .getString("items.find { it.item == '" + item + "' }.status");
    }

    private Entry last(Class<? extends Saying> kind) {
        return donorsHistory().saying(kind).reduce((former, latter) -> latter).orElseThrow();
    }

    private History donorsHistory() {
        return ledger.history(Subject.workOrder(donor.number()));
    }

    private CompetenceGiven given() {
        return new CompetenceGiven(competence, 1, today().minusDays(1), today().plusDays(300), "test");
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone());
    }

    private static String local(Instant at) {
        return java.time.format.DateTimeFormatter.ofPattern("HH:mm").format(at.atZone(zone()));
    }

    private static java.time.ZoneId zone() {
        return io.quarkus.arc.Arc.container()
                .instance(wainbook.works.shift.WorksDay.class)
                .get()
                .zone();
    }

    private static CheckItem item(String key, Condition condition, String competence) {
        return new CheckItem(
                key,
                "Item " + key,
                new Ask.Confirm(Optional.empty()),
                condition,
                Optional.of(competence),
                Optional.empty(),
                5,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                3,
                Optional.empty());
    }

    private void say(Subject subject, Saying saying) {
        ledger.write(
                        new Told(UUID.randomUUID(), List.of(subject), saying.getClass()),
                        Actor.of(Cast.WORKS_ENGINEER.number(), clock),
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons);
                });
    }

    private static List<String> keys(Response response) {
        return response.jsonPath().getList("reasons.key");
    }
}
