package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying.PlanReleased;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.VehicleFacts;
import wainbook.process.draft.InWorks.Vehicle;
import wainbook.process.plan.Check;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;
import wainbook.process.rule.Known;

/** Rules that look at vehicles and stations which are hard to bring about in a works: from plain records. */
class WhatRestsOnAReleaseTest {

    private static final Source INLET = new Source("INLET", "Charging inlet", "Unplugged", "Flap", "Empty");
    private static final Source PACK = new Source("PACK-1", "Pack 1", "Pulled", "Box", "Out");

    @Test
    void a_source_that_is_aboard_a_vehicle_stays_on_the_plan_whatever_sheet_brought_it() {
        var less = new PlanDraft(
                "bus", "ISO", List.of(INLET), List.of(), List.of(point(INLET)), 10, BigDecimal.TEN, false, checks());
        assertThat(keys(less.faults(around(vehicle("bus", List.of("PACK-1"))))))
                .containsExactly("process.sourceAboard");
        assertThat(less.faults(around(vehicle("bus", List.of())))).isEmpty();
        assertThat(less.faults(around(vehicle("truck", List.of("PACK-1"))))).isEmpty();
    }

    @Test
    void a_source_that_no_longer_comes_later_but_is_there_from_the_start_is_not_lost() {
        var always = new PlanDraft(
                "bus",
                "ISO",
                List.of(INLET, PACK),
                List.of(),
                List.of(point(INLET), point(PACK)),
                10,
                BigDecimal.TEN,
                false,
                checks());
        assertThat(always.faults(around(vehicle("bus", List.of("PACK-1"))))).isEmpty();
    }

    @Test
    void a_stage_without_a_station_is_on_no_route() {
        var route = new Route("R", "Route", List.of(new Route.Leg("paint", "PAINT")), "bus", "SURVEY");
        assertThat(keys(new RouteDraft(route).faults(around(vehicle("bus", List.of())))))
                .contains("process.legWithoutStation")
                .doesNotContain("process.unknownLegStage");
    }

    @Test
    void a_station_may_change_its_stage_while_nobody_stands_there() {
        var moved = new StagesDraft(
                List.of(new Stage("paint", 1, "Paint"), new Stage("strip", 2, "Strip")),
                List.of(
                        new Station("S-1", Optional.of("paint"), "Station"),
                        new Station("YARD", Optional.empty(), "Yard")));
        assertThat(keys(moved.faults(around(vehicle("bus", List.of()))))).containsExactly("process.stationTaken");
        assertThat(moved.faults(around())).isEmpty();
    }

    @Test
    void a_plan_goes_on_counting_from_the_number_that_its_file_gave_it() {
        Subject works = Subject.works();
        var taken = new PlanReleased(plan(3));
        var entry = new Entry(new UUID(1, 1), works, 1, Moment.of("setup", Instant.EPOCH), "hash", taken);
        Revisions revisions = Revisions.of(new History(works, List.of(entry)), About.plan("bus"));
        assertThat(revisions.revision()).isEqualTo(3);
        assertThat(PlanDraft.of(plan(3)).sayings(revisions)).containsExactly(new PlanReleased(plan(4)));
    }

    private static Plan plan(int revision) {
        return new Plan(
                "ISO",
                revision,
                "bus",
                List.of(INLET),
                List.of(PACK),
                List.of(point(INLET), point(PACK)),
                10,
                BigDecimal.TEN,
                false,
                checks());
    }

    private static Surroundings around(Vehicle... vehicles) {
        return new Surroundings(
                new Known(List.of(), Set.of("paint", "strip"), Set.of(), VehicleFacts.PREDICATES),
                List.of(),
                List.of(new Stage("paint", 1, "Paint"), new Stage("strip", 2, "Strip")),
                List.of(
                        new Station("S-1", Optional.of("strip"), "Station"),
                        new Station("YARD", Optional.empty(), "Yard")),
                List.of(),
                List.of(plan(1)),
                List.of(vehicles),
                kind -> List.of());
    }

    private static Vehicle vehicle(String variant, List<String> aboard) {
        return new Vehicle("WB-1", variant, "R", Optional.of("S-1"), List.of(), aboard, false);
    }

    private static Point point(Source source) {
        return new Point("TP-" + source.code(), source.code(), "Terminals", List.copyOf(Point.RAILS));
    }

    private static List<Check> checks() {
        return List.of(new Check("TOOLS", "Tools counted", false));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }
}
