package wainbook.line.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.engineering.flow.forecast.Gain;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.station.Situation;
import wainbook.line.station.StationState;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldInWords;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.help.HelpCall;
import wainbook.works.Role;

/** What stands first among holds of three vehicles, put on one after another, and a call for safety put last. */
class FirstThingsTest {

    private static final Instant SEVEN = Instant.parse("2026-03-02T07:00:00Z");
    private static final Matter OLD = hold("WB-1");
    private static final Matter MIDDLE = hold("WB-2");
    private static final Matter NEW = hold("WB-3");

    @Test
    void what_saves_most_late_minutes_comes_first_and_says_how_many_with_the_interval_behind_it() {
        List<FirstThings.First> first = first(Map.of(OLD, gain(5, 1), MIDDLE, gain(38, 2), NEW, gain(12, 1)));

        assertThat(first).extracting(FirstThings.First::path).containsExactly(path(MIDDLE), path(NEW), path(OLD));
        assertThat(first.get(0).worth())
                .contains("saves the line about 38 late minutes, lets 2 vehicles finish earlier");
        assertThat(first.get(0).interval().orElseThrow()).startsWith("Between 37 and 39 minutes with 95 % certainty");
    }

    @Test
    void of_equal_gains_the_older_comes_first() {
        assertThat(first(Map.of(OLD, gain(5, 1), MIDDLE, gain(5, 1), NEW, gain(5, 1))))
                .extracting(FirstThings.First::path)
                .containsExactly(path(OLD), path(MIDDLE), path(NEW));
    }

    @Test
    void what_saves_none_that_can_be_told_from_chance_follows_by_age_and_says_so() {
        Gain none = new Gain(new PairedDifference(60, 61, 1000), 0);
        List<FirstThings.First> first = first(Map.of(OLD, none, MIDDLE, none, NEW, gain(2, 0)));

        assertThat(first).extracting(FirstThings.First::path).containsExactly(path(NEW), path(OLD), path(MIDDLE));
        assertThat(first.get(1).worth()).contains("saves no late minutes that can be told from chance");
        assertThat(first.get(1).interval()).isEmpty();
    }

    @Test
    void until_it_is_known_the_order_is_that_of_age() {
        List<FirstThings.First> first = first(Map.of());

        assertThat(first).extracting(FirstThings.First::path).containsExactly(path(OLD), path(MIDDLE), path(NEW));
        assertThat(first).allSatisfy(one -> assertThat(one.worth()).contains("what it saves is being worked out"));
    }

    @Test
    void whoever_was_called_for_safety_comes_before_all_minutes() {
        var called = new HelpCall(
                new HelpCalled(1, Help.SAFETY, Optional.empty(), Optional.of("ST-4"), Optional.empty(), false),
                "W-1",
                SEVEN.plus(Duration.ofHours(3)),
                9,
                Optional.empty(),
                Optional.empty());
        Situation danger = situation("WB-4", 4, List.of(), List.of(called));

        List<FirstThings.First> first =
                FirstThings.of(List.of(held("WB-1", 1), danger), new HashMap<>(), matters -> Map.of(OLD, gain(500, 9)));
        assertThat(first).hasSize(2);
        assertThat(first.get(0).path()).isEqualTo(HelpCall.path("WB-4", 1));
        assertThat(first.get(0).worth()).isEmpty();
    }

    @Test
    void a_part_is_named_where_the_vehicle_stands_at_the_stage_that_needs_it() {
        Situation here = situation("WB-5", 5, List.of(), List.of(), missing("WB-5", "strip"));
        Situation ahead = situation("WB-6", 6, List.of(), List.of(), missing("WB-6", "fit"));
        var part = new Matter(Matter.Sort.PART, "WB-5", 1);

        List<FirstThings.First> first =
                FirstThings.of(List.of(here, ahead), new HashMap<>(), matters -> Map.of(part, gain(12, 1)));
        assertThat(first).hasSize(1);
        assertThat(first.get(0).text()).isEqualTo("Get the part for WB-5: Brake valve");
        assertThat(first.get(0).path()).isEqualTo("/orders/WB-5/awaited");
        assertThat(first.get(0).worth().orElseThrow()).startsWith("saves the line about 12 late minutes");
    }

    @Test
    void what_holds_by_rule_is_named_where_it_is_lifted_and_holds_the_station() {
        var campaign = new HoldByRule(
                "Campaign FA-0001",
                "Sealant that may not cure",
                Set.of(Stops.SIGN),
                SEVEN.plus(Duration.ofHours(2)),
                Set.of(Role.QUALITY_ENGINEER),
                "/campaigns/FA-0001#since",
                Optional.empty());
        Situation here = situation("WB-7", 7, List.of(), List.of(), History.empty(Subject.workOrder("WB-7")), campaign);

        assertThat(here.signs().held()).isTrue();
        assertThat(here.state()).isEqualTo(StationState.HELD);
        assertThat(here.since()).isEqualTo(SEVEN.plus(Duration.ofHours(2)));
        List<FirstThings.First> first =
                FirstThings.of(List.of(here, held("WB-1", 1)), new HashMap<>(), matters -> Map.of(OLD, gain(5, 1)));
        assertThat(first)
                .extracting(FirstThings.First::text)
                .containsExactly("Settle hold 1 of WB-1", "Campaign FA-0001: settle it for WB-7");
        assertThat(first.get(1).path()).isEqualTo("/campaigns/FA-0001#since");
        assertThat(first.get(1).worth())
                .contains("not in the forecast, which counts holds on the vehicle’s own record");
    }

    private static History missing(String order, String stage) {
        return new History(
                Subject.workOrder(order),
                List.of(new Entry(
                        UUID.nameUUIDFromBytes(order.getBytes(StandardCharsets.UTF_8)),
                        Subject.workOrder(order),
                        1,
                        Moment.of("W-1", SEVEN),
                        "0".repeat(64),
                        new PartAwaited(1, stage, "Brake valve", Optional.empty(), LocalDate.of(2026, 3, 4)))));
    }

    private static List<FirstThings.First> first(Map<Matter, Gain> gains) {
        return FirstThings.of(
                List.of(held("WB-3", 3), held("WB-1", 1), held("WB-2", 2)), new HashMap<>(), matters -> gains);
    }

    private static Gain gain(double minutes, int earlier) {
        return new Gain(new PairedDifference(minutes, 1, 1000), earlier);
    }

    private static Matter hold(String order) {
        return new Matter(Matter.Sort.HOLD, order, 1);
    }

    private static String path(Matter hold) {
        return "/orders/" + hold.order() + "#holds";
    }

    private static Situation held(String order, int hour) {
        var hold = new HoldInWords(
                1,
                HoldKind.PARTS,
                "parts",
                "work",
                "Coupling not delivered",
                "W-1",
                SEVEN.plus(Duration.ofHours(hour)),
                "line manager");
        return situation(order, hour, List.of(hold), List.of());
    }

    private static Situation situation(String number, int station, List<HoldInWords> holds, List<HelpCall> calls) {
        return situation(number, station, holds, calls, History.empty(Subject.workOrder(number)));
    }

    private static Situation situation(
            String number,
            int station,
            List<HoldInWords> holds,
            List<HelpCall> calls,
            History history,
            HoldByRule... byRule) {
        var ordered = new Ordered("operator", "BUS", "bus", "R", List.of("strip"), LocalDate.of(2026, 4, 1));
        var order = new WorkOrder(
                number,
                ordered,
                WorkOrder.Phase.ON_LINE,
                Optional.empty(),
                Optional.of(new Place(Optional.of("strip"), "ST-" + station)),
                Optional.of(SEVEN),
                Map.of(),
                Map.of(),
                List.of(),
                WorkOrder.Links.NONE);
        return new Situation(history, order, Optional.empty(), List.of(), holds, List.of(byRule), calls, 10, 94);
    }
}
