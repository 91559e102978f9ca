package wainbook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static wainbook.house.Cast.AUTHORISED;
import static wainbook.house.Cast.SECOND_AUTHORISED;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OnRecord;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.IsolationForm.Checked;
import wainbook.isolation.paper.IsolationForm.Locked;
import wainbook.isolation.paper.IsolationForm.Opened;
import wainbook.isolation.paper.IsolationForm.Permitted;
import wainbook.isolation.paper.IsolationForm.Proved;
import wainbook.isolation.paper.IsolationForm.Restored;
import wainbook.isolation.paper.IsolationForm.Returned;
import wainbook.isolation.paper.IsolationForm.ShutDown;
import wainbook.isolation.paper.IsolationForm.Signed;
import wainbook.isolation.paper.IsolationForm.Touched;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.permit.Work;
import wainbook.isolation.proof.Scope;
import wainbook.isolation.step.ShownOnPaper;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.paper.PaperLine;
import wainbook.station.paper.Paperwork;
import wainbook.works.shift.WorksDay;

/** Isolations on paper at a vehicle: what a form in use bars, and which work under one counts. */
@QuarkusTest
@Tag("database")
class IsolationOnPaperTest {

    @Inject
    Ledger ledger;

    @Inject
    EvidenceFiles files;

    @Inject
    Releases releases;

    @Inject
    Paperwork paperwork;

    @Inject
    ShownOnPaper shown;

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    private OnRecord bus;
    private Instant start;

    @BeforeEach
    void a_bus_at_commissioning_and_people_who_are_authorised() {
        Cast.assemble();
        AUTHORISED.give("HV", 3);
        SECOND_AUTHORISED.give("HV", 3);
        SECOND_AUTHORISED.give("HV-ISSUER", 1);
        bus = OnRecord.accepted().at("strip", "ST-1").at("fitting", "ST-2").at("commissioning", "ST-3");
        start = day.shifts().nextBegin(clock.instant()).orElseThrow().plusSeconds(600);
    }

    @AfterEach
    void the_station_is_free() {
        bus.out();
    }

    @Test
    void work_under_an_isolation_that_its_form_shows_counts() {
        IsolationForm form = form(true);
        assertThat(shown.notShown(bus.history(), form)).isEmpty();
        say(form);
        List<Saying> lands = lands(AUTHORISED, 40);
        assertThat(lands).hasSize(2);
        assertThat(lands.get(0)).isInstanceOf(TakenFromPaper.class);
        assertThat(lands.get(1)).isInstanceOf(Measured.class);
    }

    @Test
    void work_before_the_permit_after_the_return_or_without_an_own_lock_is_an_observation() {
        say(form(true));
        assertThat(notCounted(lands(AUTHORISED, 20))).contains("isolation.notInForce");
        assertThat(notCounted(lands(AUTHORISED, 61))).contains("isolation.notInForce");
        assertThat(notCounted(lands(SECOND_AUTHORISED, 40))).contains("isolation.ownLockMissing");
    }

    @Test
    void without_a_witness_the_isolation_is_not_shown_and_nothing_under_it_counts() {
        IsolationForm form = form(false);
        assertThat(shown.notShown(bus.history(), form))
                .extracting(reason -> reason.key())
                .contains("isolation.notNowIssuePermit");
        say(form);
        assertThat(notCounted(lands(AUTHORISED, 40))).containsExactly("isolating.paperNotShown");
    }

    @Test
    void an_isolation_that_stood_in_the_tool_when_it_went_down_carries_the_work_until_the_tool_is_back() {
        Cast.WORKS_ENGINEER.give("HV", 3);
        Instant before = clock.instant();
        inForceInTheTool();
        Instant worked = clock.instant();
        assertThat(lands(Cast.WORKS_ENGINEER, worked).get(1)).isInstanceOf(Measured.class);
        assertThat(notCounted(lands(Cast.WORKS_ENGINEER, before))).contains("isolation.notInForce");
        assertThat(notCounted(lands(AUTHORISED, worked))).contains("isolation.ownLockMissing");
        bus.say(new IsolationSaying.WorkStopped(StopCause.ALARM, Optional.empty()));
        assertThat(lands(Cast.WORKS_ENGINEER, worked).get(1))
                .as("what came after it changes nothing")
                .isInstanceOf(Measured.class);
        assertThat(notCounted(lands(Cast.WORKS_ENGINEER, clock.instant()))).contains("isolation.notInForce");
    }

    /** Written straight into the record, by one person, since the rules of the steps are not what is tested here. */
    private void inForceInTheTool() {
        Plan plan = plan("bus-12m");
        var level = new IsolationSaying.Level(3, clock.instant().plus(Duration.ofDays(100)));
        var tester = used("VT-01", Instrument.Sort.TWO_POLE_DETECTOR);
        var proving = new IsolationSaying.Proving(
                tester,
                used("PU-01", Instrument.Sort.DIRECT_VOLTAGE_PROVING_UNIT),
                new BigDecimal("240"),
                new BigDecimal("239"));
        String who = Cast.WORKS_ENGINEER.number();
        bus.say(new IsolationSaying.Planned(1, "ST-3", plan, Limits.usual(), level, List.of()));
        bus.say(new IsolationSaying.ShutDown("LB-1", List.of("KY-01"), List.of()));
        plan.sources().forEach(source -> bus.say(new IsolationSaying.SourceOpened(source.code(), true)));
        bus.say(new IsolationSaying.LockedOn("LK-24", "TG-01", level));
        bus.say(new IsolationSaying.TesterProvedBefore(Scope.ALL_POINTS, proving, level));
        plan.pointsWith(List.of())
                .forEach(point -> bus.say(new IsolationSaying.PointMeasured(point.code(), "VT-01", readings(point))));
        plan.pointsWith(List.of())
                .forEach(point ->
                        bus.say(new IsolationSaying.PointMeasuredAgain(point.code(), "VT-01", readings(point))));
        bus.say(new IsolationSaying.TesterProvedAfter(proving));
        bus.say(new IsolationSaying.ProofWitnessed(level));
        bus.say(new IsolationSaying.PermitIssued(
                1,
                who,
                new Work("measure the bond", "", ""),
                List.of("TP-BUS"),
                clock.instant().plus(Duration.ofHours(1)),
                level,
                true,
                List.of()));
        bus.say(new IsolationSaying.PaperRead(1, level));
    }

    private IsolationSaying.Used used(String code, Instrument.Sort sort) {
        return new IsolationSaying.Used(
                code, sort, new BigDecimal("1500"), clock.instant().plus(Duration.ofDays(100)));
    }

    @Test
    void without_any_isolation_dead_work_on_paper_is_an_observation() {
        assertThat(notCounted(lands(AUTHORISED, 40))).contains("isolation.notInForce");
    }

    @Test
    void a_form_in_use_keeps_the_vehicle_where_it_is_until_somebody_authorised_has_looked() {
        String code = blank();
        post(Cast.OUTSIDER, code, "/in-use", Map.of("id", Donor.id(), "vehicle", bus.number()))
                .then()
                .statusCode(201);
        post(Cast.AUDITOR, code, "/in-use", Map.of("id", Donor.id(), "vehicle", bus.number()))
                .then()
                .statusCode(201);
        assertThat(keys(move())).contains("line.isolatedOnPaper");
        assertThat(keys(plan())).containsExactly("isolating.onPaper");
        assertThat(Browsing.as(Cast.AUDITOR).page("/matters")).contains(code, "moving, energising, another isolation");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number()))
                .contains("Isolation form " + code + " is in use at the vehicle.");
        Map<String, Object> ended = Map.of("id", Donor.id(), "vehicle", bus.number(), "reason", "looked, no lock");
        assertThat(keys(post(Cast.TECHNICIAN, code, "/not-in-use", ended))).containsExactly("paper.notAuthorised");
        post(AUTHORISED, code, "/not-in-use", ended).then().statusCode(201);
        assertThat(keys(move())).doesNotContain("line.isolatedOnPaper");
        assertThat(keys(plan())).doesNotContain("isolating.onPaper");
    }

    @Test
    void a_form_with_locks_still_on_stays_open_until_it_is_written_over_to_its_end() {
        String code = blank();
        Instant now = clock.instant();
        post(Cast.TECHNICIAN, code, "/transcription", transcription(open(now)))
                .then()
                .statusCode(201);
        assertThat(keys(agree(Cast.TEAM_LEADER, code, 1))).containsExactly("paper.neitherNamed");
        agree(AUTHORISED, code, 1).then().statusCode(201);
        assertThat(PaperIsolations.of(bus.history()).open()).containsExactly(code);
        Cast.AUDITOR.asks().get("/api/v1/paper/" + code).then().body("state", equalTo("IN_USE"));

        post(AUTHORISED, code, "/transcription", transcription(closed(now)))
                .then()
                .statusCode(201);
        agree(Cast.TEAM_LEADER, code, 2).then().statusCode(201);
        assertThat(PaperIsolations.of(bus.history()).open()).isEmpty();
        Cast.AUDITOR.asks().get("/api/v1/paper/" + code).then().body("state", equalTo("ENTERED"));
        var last = (OnPaper) bus.history()
                .saying(OnPaper.class)
                .reduce((former, latter) -> latter)
                .orElseThrow()
                .saying();
        assertThat(last.notShown()).isNotEmpty();
        assertThat(Browsing.as(Cast.AUDITOR).page("/paper/" + code))
                .contains("This isolation does not show that the vehicle was dead.");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number()))
                .contains("Isolation on paper " + code, "It does not show the vehicle dead:");
    }

    @Test
    void a_dangerous_reading_on_paper_holds_the_vehicle() {
        String code = blank();
        Instant now = clock.instant();
        var touched = List.of(
                new Touched("TP-BUS", false, now, List.of(new Reading(Point.Pair.PLUS_MINUS, new BigDecimal("412")))));
        post(
                        Cast.TECHNICIAN,
                        code,
                        "/transcription",
                        transcription(begun(now, touched, Optional.empty(), Optional.empty())))
                .then()
                .statusCode(201);
        agree(AUTHORISED, code, 1).then().statusCode(201);
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number()))
                .contains("Voltage above the danger limit was read on isolation form " + code);
    }

    @Test
    void the_isolation_form_is_printed_by_the_plan_and_typed_over_part_by_part() {
        Cast.TEAM_LEADER
                .asks()
                .contentType("application/json")
                .body(Map.of("id", Donor.id(), "sort", "ISOLATION", "vehicles", List.of(bus.number())))
                .post("/api/v1/paper/for-vehicles")
                .then()
                .statusCode(201);
        int number = PaperForms.of(ledger.history(Subject.works())).next() - 1;
        Browsing writer = Browsing.as(AUTHORISED);
        assertThat(writer.page("/paper/print?from=" + number + "&to=" + number))
                .contains("TP-MOTOR", "phase U to V", "10 minutes at least", "All keys and remotes in the lock box");
        String path = "/paper/" + PaperForm.code(number);
        Response pictured = writer.send(
                path + "/photograph",
                writer.form(path + "/transcription"),
                "form.png",
                UUID.randomUUID().toString().getBytes(StandardCharsets.UTF_8),
                "image/png");
        Map<String, Object> typed = writer.form(pictured.header("Location").replaceFirst("^https?://[^/]+", ""));
        String now = java.time.format.DateTimeFormatter.ofPattern("HH:mm")
                .format(clock.instant().atZone(day.zone()));
        typed.put("date", day.of(clock.instant()).toString());
        typed.put("begin.1.who", AUTHORISED.number());
        typed.put("begin.1.time", now);
        typed.put("lock.1.on", now);
        Response missing = writer.send(path + "/transcription", typed);
        assertThat(missing.statusCode()).isEqualTo(422);
        assertThat(missing.asString()).contains("This blank goes with another that is filled in.");
        typed.put("lock.1.who", AUTHORISED.number());
        typed.put("lock.1.lock", "LK-21");
        typed.put("lock.1.tag", "TG-01");
        assertThat(writer.send(path + "/transcription", typed).statusCode()).isEqualTo(303);
        assertThat(Browsing.as(SECOND_AUTHORISED).page(path + "/comparison")).contains("LK-21, TG-01 still on");
    }

    private List<Saying> lands(Cast doer, int minute) {
        return lands(doer, at(minute));
    }

    private List<Saying> lands(Cast doer, Instant done) {
        var line = new PaperLine(
                "bonding-pack1", doer.number(), done, Optional.of("BO-01"), List.of(new Figure("reading", "0.02")));
        var source = new Paperwork.Source("F-9002", picture(), Cast.TECHNICIAN.number(), Cast.TEAM_LEADER.number());
        return paperwork.judge(bus.history(), source, List.of(line), at(120)).fold(said -> said, reasons -> {
            throw new AssertionError(reasons);
        });
    }

    private static List<String> notCounted(List<Saying> lands) {
        return ((Observed) lands.get(1)).notCountedFor();
    }

    private void say(IsolationForm form) {
        bus.say(new OnPaper(
                "F-9001",
                picture(),
                plan("bus-12m"),
                form,
                shown.notShown(bus.history(), form).stream()
                        .map(reason -> reason.key())
                        .distinct()
                        .toList(),
                form.closed(),
                Cast.TECHNICIAN.number(),
                AUTHORISED.number()));
    }

    /** Kept in a later shift, so that every time on it lies in one; nothing of it is written before the tests’ own time. */
    private IsolationForm form(boolean witnessed) {
        Plan plan = plan("bus-12m");
        var touches = new ArrayList<Touched>();
        for (Point point : plan.pointsWith(List.of())) {
            touches.add(new Touched(point.code(), false, at(16), readings(point)));
            touches.add(new Touched(point.code(), true, at(17), readings(point)));
        }
        String second = SECOND_AUTHORISED.number();
        String isolator = AUTHORISED.number();
        return new IsolationForm(
                isolator,
                at(0),
                List.of(Precaution.values()),
                Optional.of(new ShutDown(at(1), "LB-1", List.of("KY-01"))),
                plan.sources().stream()
                        .map(source -> new Opened(source.code(), at(2)))
                        .toList(),
                List.of(new Locked(isolator, "LK-21", "TG-01", at(3), Optional.empty())),
                Optional.of(
                        new Proved(isolator, at(15), "VT-01", "PU-01", new BigDecimal("240"), new BigDecimal("239"))),
                touches,
                Optional.of(
                        new Proved(isolator, at(18), "VT-01", "PU-01", new BigDecimal("240"), new BigDecimal("241"))),
                witnessed ? Optional.of(new Signed(second, at(19))) : Optional.empty(),
                Optional.of(new Permitted(second, at(21), isolator, "measure the bond", List.of("TP-BUS"), at(120))),
                List.of(new Signed(isolator, at(22))),
                Optional.of(new Returned(isolator, at(60), false)),
                Optional.of(new Signed(second, at(62))),
                plan.restoration().stream()
                        .filter(check -> !check.onlyIfOpened())
                        .map(check -> new Checked(check.code(), second, at(63)))
                        .toList(),
                Optional.of(new Restored(isolator, at(65), "LK-21")));
    }

    private static IsolationForm open(Instant now) {
        return begun(now, List.of(), Optional.empty(), Optional.empty());
    }

    private static IsolationForm closed(Instant now) {
        return begun(now, List.of(), Optional.of(now), Optional.of(new Restored(AUTHORISED.number(), now, "LK-21")));
    }

    private static IsolationForm begun(
            Instant now, List<Touched> touches, Optional<Instant> off, Optional<Restored> restored) {
        return new IsolationForm(
                AUTHORISED.number(),
                now,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(new Locked(AUTHORISED.number(), "LK-21", "TG-01", now, off)),
                Optional.empty(),
                touches,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                restored);
    }

    private static List<Reading> readings(Point point) {
        return point.pairs().stream()
                .map(pair -> new Reading(pair, new BigDecimal("0.2")))
                .toList();
    }

    private Plan plan(String variant) {
        return releases.plan(variant).orElseThrow();
    }

    private Instant at(int minute) {
        return start.plus(Duration.ofMinutes(minute));
    }

    private EvidenceFile picture() {
        return files.keep(new byte[] {1, 2, 3}, "image/png");
    }

    private String blank() {
        Cast.TEAM_LEADER
                .asks()
                .contentType("application/json")
                .body(Map.of("id", Donor.id(), "sort", "ISOLATION", "count", 1))
                .post("/api/v1/paper/blank")
                .then()
                .statusCode(201);
        return PaperForm.code(PaperForms.of(ledger.history(Subject.works())).next() - 1);
    }

    private Map<String, Object> transcription(IsolationForm form) {
        String photograph = Cast.TECHNICIAN
                .asks()
                .contentType("image/png")
                .body(UUID.randomUUID().toString().getBytes(StandardCharsets.UTF_8))
                .post("/api/v1/paper/photographs")
                .then()
                .statusCode(200)
                .extract()
                .path("sha256");
        return Map.of(
                "id", Donor.id(), "vehicle", bus.number(), "photograph", photograph, "isolation", Forms.json(form));
    }

    private Response agree(Cast who, String code, int transcription) {
        return post(
                who,
                code,
                "/agreement",
                Map.of("id", Donor.id(), "transcription", transcription, "vehicle", bus.number()));
    }

    private Response move() {
        return Cast.LINE_MANAGER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id",
                        Donor.id(),
                        "direction",
                        "OFF_LINE",
                        "to",
                        "BAY-1",
                        "confirmed",
                        List.of(),
                        "reason",
                        "test"))
                .post("/api/v1/orders/" + bus.number() + "/moves");
    }

    private Response plan() {
        return AUTHORISED
                .asks()
                .contentType("application/json")
                .body(Map.of("id", Donor.id(), "with", Map.of("confirmed", List.of())))
                .post("/api/v1/orders/" + bus.number() + "/isolation/plan");
    }

    private static Response post(Cast who, String code, String path, Map<String, ?> body) {
        return who.asks().contentType("application/json").body(body).post("/api/v1/paper/" + code + path);
    }

    private static List<String> keys(Response response) {
        return response.jsonPath().getList("reasons.key");
    }
}
