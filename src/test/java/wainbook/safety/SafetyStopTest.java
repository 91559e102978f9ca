package wainbook.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Reason;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.isolation.Danger;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.step.TakeStep;
import wainbook.isolation.step.ToTake;
import wainbook.isolation.step.Wanted;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.move.Move;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.Holding;
import wainbook.safety.SafetySaying.WorkStopped;
import wainbook.safety.stop.Stop;
import wainbook.safety.stop.StopRow;
import wainbook.safety.stop.Stopping;

/** Work is stopped by one touch, everywhere at once, and goes on by a second person's word. */
@QuarkusTest
@Tag("database")
class SafetyStopTest {

    @Inject
    Stopping stopping;

    @Inject
    Holding holding;

    @Inject
    TakeStep isolation;

    @Inject
    Move moving;

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    private OnRecord bus;

    @BeforeEach
    void a_bus_at_the_first_station() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void everything_goes_on() {
        for (StopRow row : StopRow.open()) {
            if (row.vehicle.equals("_works")) {
                stopping.lift(
                        new Stopping.ToLift(UUID.randomUUID(), row.number, "test over"), as(Cast.QUALITY_ENGINEER));
            }
        }
        bus.out();
    }

    @Test
    void a_touch_on_the_station_page_stops_work_signing_and_moving_and_is_told_where_eyes_are() {
        Browsing outsider = Browsing.as(Cast.OUTSIDER);
        String station = "/station/" + bus.number();
        Map<String, Object> form = outsider.form(station);
        String path = location(outsider.send("/safety/stop", form));
        assertThat(location(outsider.send("/safety/stop", form))).isEqualTo(path);
        assertThat(bus.history().saying(WorkStopped.class)).hasSize(1);
        assertThat(held())
                .extracting(Held::kindOfHold, Held::stops)
                .containsExactly(tuple(HoldKind.SAFETY, List.of(Stops.WORK, Stops.SIGN, Stops.MOVE)));

        assertThat(outsider.page(station)).contains("Work is stopped: Safety stop");
        assertThat(outsider.page("/line")).contains("Work is stopped: ", bus.number() + " since ", "Safety stop");
        assertThat(outsider.page("/matters")).contains(bus.number());
        assertThat(outsider.page("/safety")).contains(path);
        assertThat(outsider.page(path)).contains("No work on " + bus.number());
        assertThat(moving.move(aside(), as(Cast.LINE_MANAGER)).reasons())
                .extracting(Reason::key)
                .contains("line.held");
        assertThat(outsider.page("/orders/" + bus.number())).contains("Safety stop 1: work was stopped.");
        release(Cast.QUALITY_ENGINEER);
        assertThat(outsider.page(path)).contains("lifted", "guard put on");
        assertThat(outsider.page("/line")).doesNotContain(bus.number() + " since ");
    }

    @Test
    void a_stop_never_bars_what_makes_safe() {
        stop(Cast.TECHNICIAN);
        for (Wanted safeMaking : List.of(
                new Wanted.ReportDanger(Danger.HEAT_OR_FIRE, "roof"),
                new Wanted.Stop(StopCause.ASKED, Optional.empty()))) {
            assertThat(isolation
                            .take(
                                    new ToTake(
                                            UUID.randomUUID(),
                                            bus.number(),
                                            safeMaking,
                                            Optional.empty(),
                                            Optional.empty()),
                                    as(Cast.OUTSIDER))
                            .reasons())
                    .as(safeMaking.toString())
                    .isEmpty();
        }
        stop(Cast.TECHNICIAN);
        assertThat(bus.history().saying(WorkStopped.class)).hasSize(2);
        release(Cast.QUALITY_ENGINEER);
    }

    @Test
    void who_stopped_does_not_let_go_on_alone_whatever_their_role() {
        stop(Cast.WORKS_ENGINEER);
        assertThat(releasing(Cast.WORKS_ENGINEER)).containsExactly("order.ownSafetyHold");
        assertThat(releasing(Cast.LINE_MANAGER)).containsExactly("order.mayNotRelease");
        assertThat(releasing(Cast.QUALITY_ENGINEER)).isEmpty();
    }

    @Test
    void an_empty_station_that_is_stopped_takes_no_vehicle_in() {
        Outcomes stopped = stopAt("ST-2", Cast.TECHNICIAN);
        assertThat(stopped.entry().subject()).isEqualTo(Subject.works());
        bus.signed();
        var forward = new Move.ToMove(
                UUID.randomUUID(),
                bus.number(),
                Direction.FORWARD,
                "ST-2",
                Optional.empty(),
                List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan"),
                Optional.empty(),
                Optional.empty());
        assertThat(moving.move(forward, as(Cast.LINE_MANAGER)).reasons())
                .extracting(Reason::key)
                .contains("line.placeStopped");
        Browsing reader = Browsing.as(Cast.TECHNICIAN);
        assertThat(reader.page("/stations/ST-2")).contains("work here is stopped");
        assertThat(reader.page(stopped.path())).contains("You made it");
        assertThat(reader.page("/matters")).contains("moving a vehicle there");
        int number = ((WorkStopped) stopped.entry().saying()).stop();
        assertThat(stopping.lift(
                                new Stopping.ToLift(UUID.randomUUID(), number, "crane locked away"),
                                as(Cast.QUALITY_ENGINEER))
                        .reasons())
                .isEmpty();
        assertThat(moving.move(forward, as(Cast.LINE_MANAGER)).reasons())
                .extracting(Reason::key)
                .doesNotContain("line.placeStopped");
    }

    @Test
    void at_a_station_with_a_vehicle_the_vehicle_is_stopped() {
        Outcomes stopped = stopAt("ST-1", Cast.TECHNICIAN);
        assertThat(stopped.entry().subject()).isEqualTo(Subject.workOrder(bus.number()));
        release(Cast.QUALITY_ENGINEER);
    }

    @Test
    void a_retry_after_the_vehicle_went_on_finds_the_first_try() {
        var asked = new Stopping.ToStop(UUID.randomUUID(), Optional.empty(), Optional.of("ST-1"), Optional.empty());
        Entry first = done(asked, Cast.TECHNICIAN);
        bus.out();
        assertThat(done(asked, Cast.TECHNICIAN)).isEqualTo(first);
        release(Cast.QUALITY_ENGINEER);
    }

    @Test
    void a_touch_on_the_line_page_tells_the_whole_works_and_one_more_says_where() {
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        String path = location(manager.send("/safety/stop", manager.form("/line")));
        assertThat(path).startsWith("/safety/stops/_works/");
        assertThat(manager.page("/orders")).contains("Work is stopped: ", "place not said since ");
        Map<String, Object> where = manager.form(path);
        where.put("atStation", "ST-1");
        assertThat(location(manager.send("/safety/stop", where))).startsWith("/safety/stops/" + bus.number() + "/");
        assertThat(held()).hasSize(1);
        release(Cast.QUALITY_ENGINEER);
    }

    @Test
    void a_vehicle_that_nobody_knows_stops_nothing_and_is_told_all_the_same() {
        var asked =
                new Stopping.ToStop(UUID.randomUUID(), Optional.of("NO-SUCH"), Optional.empty(), Optional.of("help"));
        assertThat(done(asked, Cast.TECHNICIAN).subject()).isEqualTo(Subject.works());
    }

    @Test
    void strangers_are_not_told_where_work_is_stopped() {
        stop(Cast.TECHNICIAN);
        assertThat(Browsing.asStranger().page("/sign-in")).doesNotContain(bus.number());
        release(Cast.QUALITY_ENGINEER);
    }

    private record Outcomes(Entry entry, String path) {}

    private Outcomes stopAt(String station, Cast person) {
        Entry entry = done(
                new Stopping.ToStop(UUID.randomUUID(), Optional.empty(), Optional.of(station), Optional.empty()),
                person);
        return new Outcomes(entry, Stop.path(entry));
    }

    private void stop(Cast person) {
        done(
                new Stopping.ToStop(UUID.randomUUID(), Optional.of(bus.number()), Optional.empty(), Optional.empty()),
                person);
    }

    private Entry done(Stopping.ToStop asked, Cast person) {
        return stopping.stop(asked, as(person)).fold(entry -> entry, reasons -> {
            throw new AssertionError("a stop was refused: " + reasons);
        });
    }

    private Move.ToMove aside() {
        return new Move.ToMove(
                UUID.randomUUID(),
                bus.number(),
                Direction.OFF_LINE,
                "BAY-1",
                Optional.empty(),
                List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan"),
                Optional.of("aside"),
                Optional.empty());
    }

    private List<Held> held() {
        return WorkOrder.of(bus.history()).orElseThrow().holds();
    }

    private void release(Cast person) {
        held().forEach(hold -> assertThat(holding.release(
                                new Holding.ToRelease(UUID.randomUUID(), bus.number(), hold.hold(), "guard put on"),
                                as(person))
                        .reasons())
                .isEmpty());
    }

    private List<String> releasing(Cast person) {
        return holding
                .release(
                        new Holding.ToRelease(
                                UUID.randomUUID(), bus.number(), held().get(0).hold(), "guard put on"),
                        as(person))
                .reasons()
                .stream()
                .map(Reason::key)
                .toList();
    }

    private Actor as(Cast person) {
        return Actor.of(person.number(), clock);
    }

    private static String location(Response answer) {
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.header("Location").replaceFirst("^.*?(?=/safety/)", "");
    }
}
