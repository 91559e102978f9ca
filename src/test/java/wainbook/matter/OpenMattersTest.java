package wainbook.matter;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.Judged;
import wainbook.handover.HandoverSaying.SetJudged;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.Standing;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.handover.requirement.Rule;
import wainbook.handover.requirement.RuleSets;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.LineSaying.PartCame;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Stops;
import wainbook.process.Releases;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpAnswered;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.StationSaying.HelpResolved;
import wainbook.station.StationSaying.ReSequenced;

/** Every sort of open matter is in the list while it is open, with its owner, due and what it bars. */
@QuarkusTest
class OpenMattersTest {

    @Inject
    Releases releases;

    @Inject
    RuleSets rules;

    @Inject
    Clock clock;

    @Inject
    OpenMatters open;

    private OnRecord bus;

    @BeforeEach
    void a_bus_on_the_line() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_station_is_free_again() {
        bus.out();
    }

    @Test
    void a_nonconformity_waits_for_a_quality_engineer_until_it_is_decided() {
        bus.say(new NonconformityOpened(
                1, "strip", Optional.empty(), Cause.REPORTED, "Bracket bent", Optional.empty()));
        Map<String, Object> matter = only("NONCONFORMITY");
        assertThat(matter).containsEntry("what", "Bracket bent").containsEntry("bars", "signing the gate");
        assertThat(owners(matter)).containsExactly("quality-engineer");
        assertThat(due(matter)).isEqualTo("gate of Strip and decommission");
        bus.say(new Disposed(1, Disposition.REWORK, "Straighten it"));
        assertThat(matters()).isEmpty();
    }

    @Test
    void a_hold_waits_for_whoever_may_release_it() {
        bus.say(new Held(1, HoldKind.PARTS, List.of(Stops.MOVE), "Brackets missing"));
        Map<String, Object> matter = only("HOLD");
        assertThat(owners(matter)).containsExactly("line-manager", "works-engineer");
        assertThat(matter).containsEntry("bars", "moving");
        bus.say(new HoldReleased(1, "Brackets came"));
        assertThat(matters()).isEmpty();
    }

    @Test
    void what_stops_somebody_comes_before_what_is_older() {
        bus.say(new HelpCalled(1, Help.QUALITY, Optional.of("strip"), Optional.of("ST-1"), Optional.empty(), false));
        List<OpenMatter> all = open.all(clock.instant());
        long firstQuiet = all.stream().takeWhile(OpenMatter::stopsSomebody).count();
        assertThat(all.subList(0, (int) firstQuiet))
                .extracting(OpenMatter::order)
                .contains(bus.number());
        assertThat(all.subList((int) firstQuiet, all.size())).noneMatch(OpenMatter::stopsSomebody);
    }

    @Test
    void a_help_call_waits_for_who_was_called_and_then_for_who_comes() {
        bus.say(new HelpCalled(1, Help.MAINTENANCE, Optional.of("strip"), Optional.of("ST-1"), Optional.empty(), true));
        Map<String, Object> matter = only("HELP_CALL");
        assertThat(owners(matter)).containsExactly("maintenance");
        assertThat(matter)
                .containsEntry("bars", "work at the vehicle")
                .containsEntry("what", "Help called: maintenance");
        bus.say(new HelpAnswered(1));
        assertThat(owners(only("HELP_CALL"))).containsExactly(Cast.WORKS_ENGINEER.number());
        bus.say(new HelpResolved(1, Optional.empty()));
        assertThat(matters()).isEmpty();
    }

    @Test
    void carried_over_work_waits_for_its_owner_at_the_stage_it_went_to() {
        bus.say(new CarriedOver(about(), "fitting", Cast.SECOND_TECHNICIAN.number(), "Tool broke"));
        Map<String, Object> matter = only("CARRIED_OVER");
        assertThat(owners(matter)).containsExactly(Cast.SECOND_TECHNICIAN.number());
        assertThat(due(matter)).isEqualTo("High-voltage fitting");
        assertThat(matter)
                .containsEntry("what", "Tool broke")
                .containsEntry("bars", "signing the gate of High-voltage fitting");
    }

    @Test
    void re_sequenced_work_says_what_it_bars() {
        bus.say(new ReSequenced(about(), "commissioning", List.of(Bar.DRIVING, Bar.ENERGISING), "Part missing"));
        Map<String, Object> matter = only("RE_SEQUENCED");
        assertThat(matter).containsEntry("bars", "driving, energising");
        assertThat(owners(matter)).containsExactly(Cast.WORKS_ENGINEER.number());
    }

    @Test
    void an_awaited_part_is_due_on_the_day_it_is_expected_and_bars_nothing_by_itself() {
        LocalDate expected = LocalDate.ofInstant(clock.instant(), java.time.ZoneId.of("Europe/London"))
                .minusDays(1);
        bus.say(new PartAwaited(1, "fitting", "Coupling", Optional.empty(), expected));
        Map<String, Object> matter = only("PART");
        assertThat(matter)
                .containsEntry("what", "Coupling")
                .containsEntry("about", "High-voltage fitting")
                .containsEntry("bars", "");
        assertThat(owners(matter)).containsExactly("line-manager", "team-leader", "works-engineer");
        assertThat((Map<?, ?>) matter.get("due"))
                .isEqualTo(
                        Map.of("text", wainbook.page.Formats.date(expected), "on", expected.toString(), "late", true));
        bus.say(new PartCame(1, ""));
        assertThat(matters()).isEmpty();
    }

    @Test
    void a_document_that_may_follow_waits_from_handover_until_it_is_in_hand() {
        Rule follows = rules.named("GB").orElseThrow().rules().rules().stream()
                .filter(rule -> rule.followDays().isPresent() && rule.when().isEmpty())
                .findFirst()
                .orElseGet(() -> rules.named("GB").orElseThrow().rules().rules().stream()
                        .filter(rule -> rule.followDays().isPresent())
                        .findFirst()
                        .orElseThrow());
        LocalDate today = LocalDate.ofInstant(clock.instant(), java.time.ZoneId.of("Europe/London"));
        bus.out();
        bus.say(new SetJudged(
                "GB", 1, today, List.of(new Judged(follows.id(), follows.document(), Answer.NEEDED, Standing.NEEDED))));
        bus.say(new HandedOver("OP-01", List.of()));
        assertThat(matters())
                .filteredOn(matter -> String.valueOf(matter.get("title")).endsWith(follows.id()))
                .singleElement()
                .satisfies(matter -> {
                    assertThat(matter).containsEntry("sort", "DOCUMENT");
                    assertThat(due(matter)).isNotEmpty();
                });
        bus.say(new DocumentNoted(
                follows.id(),
                follows.document(),
                "GB",
                1,
                State.IN_HAND,
                "no 1",
                Optional.empty(),
                Optional.empty(),
                ""));
        assertThat(matters())
                .filteredOn(matter -> String.valueOf(matter.get("title")).endsWith(follows.id()))
                .isEmpty();
    }

    @Test
    void the_list_is_filtered_by_kind_vehicle_and_owner_in_the_address_and_shown_oldest_first() {
        bus.say(new Held(1, HoldKind.QUALITY, List.of(Stops.SIGN), "Crack suspected"));
        bus.say(new NonconformityOpened(
                1, "strip", Optional.empty(), Cause.REPORTED, "Bracket bent", Optional.empty()));
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        String all = manager.page("/matters?order=" + bus.number());
        assertThat(all.indexOf("Crack suspected")).isPositive().isLessThan(all.indexOf("Bracket bent"));
        assertThat(manager.page("/matters?order=" + bus.number() + "&sort=HOLD"))
                .contains("Crack suspected")
                .doesNotContain("Bracket bent");
        assertThat(manager.page("/matters?order=" + bus.number() + "&owner=line-manager"))
                .contains("No open matter fits");
        assertThat(manager.page("/matters?order=" + bus.number() + "&search=BRACKET"))
                .contains("Bracket bent")
                .doesNotContain("Crack suspected");
        assertThat(manager.page("/matters.csv?order=" + bus.number() + "&sort=NONCONFORMITY"))
                .contains("Bracket bent", "quality-engineer")
                .doesNotContain("Crack suspected");
    }

    private About about() {
        String sheet = releases.route("BUS-12M")
                .orElseThrow()
                .leg("strip")
                .orElseThrow()
                .checkSheet();
        String item = releases.sheet(sheet, 1).items().get(0).key();
        return new About("strip", sheet, 1, item, List.of());
    }

    private Map<String, Object> only(String sort) {
        assertThat(matters()).hasSize(1);
        assertThat(matters().get(0)).containsEntry("sort", sort).containsEntry("order", bus.number());
        return matters().get(0);
    }

    private List<Map<String, Object>> matters() {
        JsonPath answer = Cast.AUDITOR
                .asks()
                .queryParam("order", bus.number())
                .get("/api/v1/matters")
                .jsonPath();
        return answer.getList("$");
    }

    private static List<String> owners(Map<String, Object> matter) {
        return ((List<?>) matter.get("owners"))
                .stream()
                        .map(owner -> String.valueOf(((Map<?, ?>) owner).get("key")))
                        .toList();
    }

    private static String due(Map<String, Object> matter) {
        return String.valueOf(((Map<?, ?>) matter.get("due")).get("text"));
    }
}
