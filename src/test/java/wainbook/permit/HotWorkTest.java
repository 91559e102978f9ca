package wainbook.permit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Reason;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Subject;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatters;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.station.work.Workplace;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.shift.WorksDay;

/** The life of a hot-work permit on a vehicle, from its refusal to the last look for fire. */
@QuarkusTest
@Tag("database")
class HotWorkTest {

    @Inject
    Permitting permitting;

    /** The item by which a pack comes aboard in the works that tests play in. */
    private static final String FITTING = "pack1-mount";

    @Inject
    OpenMatters matters;

    @Inject
    Workplace workplace;

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    private OnRecord bus;
    private Instant start;

    @BeforeEach
    void a_bus_in_the_yard_and_a_shift_that_has_begun() {
        Cast.assemble();
        bus = OnRecord.accepted();
        Instant now = clock.instant();
        start = day.shifts().shifts().isEmpty()
                ? day.endOf(day.of(now)).plusSeconds(3600)
                : day.shifts().nextBegin(now).orElseThrow().plusSeconds(600);
    }

    @Test
    void hot_work_is_issued_received_handed_back_watched_and_closed() {
        assertThat(issue(List.of(), leader(0))).contains("permit.precautionMissing");
        assertThat(issue(precautions(), Cast.TECHNICIAN.at(start))).contains("permit.mayNotIssue");
        assertThat(issue(precautions(), leader(0))).isEmpty();

        String path = "/permits/" + bus.number() + "/1";
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number())).contains("1 permit open", path);
        assertThat(matter(start).orElseThrow()).contains("the receiver to read and receive it");
        assertThat(Browsing.as(Cast.AUDITOR).page("/permits")).contains(path, "the receiver to read and receive it");
        assertThat(take(Step.RECEIVE, leader(1), "")).contains("permit.receiverOnly");
        assertThat(take(Step.RECEIVE, welder(2), "")).isEmpty();
        assertThat(Browsing.as(Cast.AUDITOR).page(path)).contains("in force", "Stop the work");

        assertThat(matter(start.plusSeconds(180))).as("in force, nobody waits").isEmpty();

        assertThat(take(Step.HAND_BACK, welder(30), "")).isEmpty();
        assertThat(matter(start.plusSeconds(1860)).orElseThrow()).contains("the fire watch, to ");
        assertThat(take(Step.CLOSE, leader(89), "all cold")).containsExactly("permit.fireWatch");
        Cast.AUDITOR
                .asks()
                .get("/api/v1" + path)
                .then()
                .body("state", equalTo("HANDED_BACK"))
                .body("open", equalTo(true));
        assertThat(take(Step.CLOSE, leader(90), "all cold")).isEmpty();
        assertThat(Browsing.as(Cast.AUDITOR).page(path)).contains("closed", "all cold");
        assertThat(matter(start.plusSeconds(5400))).isEmpty();
        assertThat(PermitRow.<PermitRow>findById(bus.number() + "/1").stillOpen).isFalse();
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number())).contains("Permit 1 was closed.");
    }

    @Test
    void packs_are_not_fitted_beside_it() {
        bus.at("strip", "ST-1").signed().at("fitting", "ST-2");
        try {
            assertThat(againstFitting()).doesNotContain("permit.packsWait");
            bus.say(new PermitSaying.PermitIssued(
                    1,
                    Work.HOT_WORK,
                    Optional.empty(),
                    "cut the old bracket",
                    List.of(),
                    precautions(),
                    Cast.TECHNICIAN.number(),
                    clock.instant().plus(Duration.ofHours(1))));
            assertThat(againstFitting()).contains("permit.packsWait");
            assertThat(Browsing.as(Cast.TECHNICIAN).page("/station/" + bus.number()))
                    .contains("1 permit open", "/permits/" + bus.number() + "/1");
        } finally {
            bus.out();
        }
    }

    private List<String> againstFitting() {
        return keys(workplace.against(
                bus.history(), Cast.TECHNICIAN.at(clock.instant()).at(clock.instant()), FITTING, Optional.empty()));
    }

    @Test
    void anybody_stops_it_from_its_page_with_one_touch_and_a_second_touch_writes_nothing_more() {
        bus.say(new PermitSaying.PermitIssued(
                1,
                Work.HOT_WORK,
                Optional.empty(),
                "cut the old bracket",
                List.of(),
                precautions(),
                Cast.TECHNICIAN.number(),
                clock.instant().plus(Duration.ofHours(1))));
        String path = "/permits/" + bus.number() + "/1";
        Browsing outsider = Browsing.as(Cast.OUTSIDER);
        Map<String, Object> form = outsider.form(path);
        assertThat(outsider.send(path + "/stop", form).statusCode()).isEqualTo(303);
        assertThat(outsider.send(path + "/stop", form).statusCode()).isEqualTo(303);
        assertThat(bus.history().saying(PermitSaying.WorkStopped.class)).hasSize(1);
        assertThat(outsider.page(path)).contains("work stopped");
    }

    @Test
    void the_form_gives_back_what_was_typed_with_every_fault_at_its_field() {
        Browsing leader = Browsing.as(Cast.TEAM_LEADER);
        String path = "/permits/new?sort=HOT_WORK&order=" + bus.number();
        Map<String, Object> form = leader.form(path);
        form.put("work", "cut the old bracket");
        form.put("DRAINED", "yes");
        form.put("validUntil", "soon");
        var answer = leader.send("/permits/new", form);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains("cut the old bracket", "Write a time of day");
        assertThat(bus.history().saying(PermitSaying.class)).isEmpty();
    }

    /** What the list of open matters says of it. */
    private Optional<String> matter(Instant at) {
        return matters.all(at).stream()
                .filter(matter -> matter.sort() == OpenMatter.Sort.PERMIT)
                .filter(matter -> matter.order().equals(bus.number()))
                .map(OpenMatter::what)
                .findFirst();
    }

    private Actor leader(int minutes) {
        return Cast.TEAM_LEADER.at(start.plus(Duration.ofMinutes(minutes)));
    }

    private Actor welder(int minutes) {
        return Cast.TECHNICIAN.at(start.plus(Duration.ofMinutes(minutes)));
    }

    private List<String> issue(List<Ticked> precautions, Actor issuer) {
        var asked = new Permitting.ToIssue(
                UUID.randomUUID(),
                Subject.workOrder(bus.number()),
                Work.HOT_WORK,
                Optional.empty(),
                "cut the old bracket",
                List.of(),
                precautions,
                Cast.TECHNICIAN.number(),
                start.plus(Duration.ofMinutes(45)));
        return keys(permitting.issue(asked, issuer).reasons());
    }

    private List<String> take(Step step, Actor actor, String words) {
        return keys(permitting
                .take(
                        new Permitting.ToTake(
                                UUID.randomUUID(),
                                Subject.workOrder(bus.number()),
                                1,
                                step,
                                Optional.of(words).filter(text -> !text.isEmpty())),
                        actor)
                .reasons());
    }

    /** A gas detector is named where a test before this one has registered some. */
    private List<Ticked> precautions() {
        return List.of(
                new Ticked(Precaution.DRAINED, Optional.empty()),
                new Ticked(
                        Precaution.GAS_FREE,
                        InstrumentRow.ofKind("gas-detector").stream()
                                .map(row -> row.code)
                                .findFirst()),
                new Ticked(Precaution.EXTINGUISHER, Optional.empty()),
                new Ticked(Precaution.FIRE_WATCH, Optional.of(Cast.SECOND_TECHNICIAN.number())));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }
}
