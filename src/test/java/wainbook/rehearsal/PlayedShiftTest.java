package wainbook.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.verification.Verify;
import wainbook.line.page.LineLook;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.Holding;
import wainbook.rehearsal.time.DemoClock;
import wainbook.rehearsal.time.Running;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.InCampaign;
import wainbook.works.PersonRow;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** The demonstration through a shift, as fast as it goes: stopped on the way, and gone on with. */
@QuarkusTest
@TestProfile(PlayedShiftTest.FewHandedOver.class)
class PlayedShiftTest {

    /** All that the demonstration has, of its past a few vehicles: one is awaited back, a campaign is open. */
    public static class FewHandedOver implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            try {
                return Map.of(
                        "wainbook.demo.folder",
                        "demo-fleet",
                        "wainbook.rehearsal",
                        "true",
                        "wainbook.rehearsal.handed-over",
                        "6",
                        "wainbook.rehearsal.behind",
                        "false",
                        "wainbook.data",
                        Files.createTempDirectory(Path.of("target").toAbsolutePath(), "played-shift")
                                .toString(),
                        "quarkus.datasource.jdbc.url",
                        "jdbc:h2:mem:played-shift;DB_CLOSE_DELAY=-1;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
        }
    }

    @Inject
    Rehearsal rehearsal;

    @Inject
    DemoClock demo;

    @Inject
    Ledger ledger;

    @Inject
    Verify verify;

    @Inject
    LineLook look;

    @Inject
    WorksDay day;

    @Inject
    Holding holding;

    @Inject
    Clock clock;

    @Inject
    Campaigns campaigns;

    /** As many as it takes until a vehicle that comes back has been received, surveyed and finished. */
    private static final int FURTHER_SHIFTS = 2;

    private static final String WISH = "The operator wants to see it as it is";

    private final Tally tally = new Tally();
    private final List<Instant> shown = new ArrayList<>();

    /** Kept in the meantime: the campaign's last acts are as late as the works' clock was by then. */
    private List<Entry> since(Set<UUID> already) {
        return ledger.subjects(Subject.Sort.WORK_ORDER).stream()
                .flatMap(order -> ledger.history(order).entries().stream())
                .filter(entry -> !already.contains(entry.id()))
                .toList();
    }

    private Set<UUID> already() {
        return since(Set.of()).stream().map(Entry::id).collect(Collectors.toSet());
    }

    private void played(Instant from, Instant until) {
        new PlayedShift(rehearsal.present().orElseThrow(), tally)
                .play(from, until, new Running(from, Double.POSITIVE_INFINITY, time -> {
                    shown.add(time);
                    demo.standing(time);
                }));
    }

    @Test
    void shifts_go_by_in_order_of_time_without_standing_still_and_leave_a_record_that_verifies() {
        Instant from = demo.began().orElseThrow();
        Instant end = day.shiftEnd(from).orElseThrow();
        Instant broken = from.plus(Duration.ofMinutes(100));
        aCampaignLookedAtVehiclesOnTheLine();
        Set<UUID> already = already();

        played(from, broken);
        List<Entry> before = since(already);
        assertThat(before)
                .hasSizeGreaterThan(50)
                .allSatisfy(entry -> assertThat(entry.moment().at()).isBeforeOrEqualTo(broken));
        int moves = tally.moves();
        WorkOrderRow held = somebodyHoldsTheFirstVehicle();
        played(broken, end);
        List<Entry> all = since(already);

        assertThat(shown).isSorted();
        assertThat(all).extracting(entry -> entry.moment().at()).isSubsetOf(shown);
        assertThat(all).as(String.valueOf(tally.leftOut())).hasSizeGreaterThan(2 * before.size());
        assertThat(all.stream().filter(entry -> entry.saying() instanceof Moved))
                .hasSizeGreaterThan(10);
        assertThat(all.stream().filter(entry -> entry.saying() instanceof SignedOff))
                .hasSizeGreaterThan(10);
        assertThat(tally.moves()).isGreaterThan(moves);
        assertThat(tally.leftOutInAll()).as(String.valueOf(tally.leftOut())).isLessThan(all.size() / 20);
        assertThat(WorkOrder.of(ledger.history(Subject.workOrder(held.number)))
                        .orElseThrow()
                        .holds())
                .as("what people hold is theirs to let go")
                .extracting(Held::reason)
                .contains(WISH);
        assertThat(tally.leftOut())
                .filteredOn(one -> one.place().equals(held.occupies))
                .flatExtracting(Tally.LeftOut::reasons)
                .isNotEmpty();
        everyStationIsInOneState(end);
        nobodysLockIsOnOverNight(end);
        letGo(held);
        theLineGoesOn(FURTHER_SHIFTS);
        assertThat(verify.everything().findings()).isEmpty();
    }

    private void aCampaignLookedAtVehiclesOnTheLine() {
        List<String> onLine = rows(row -> row.phase == Phase.ON_LINE).stream()
                .map(row -> row.number)
                .toList();
        assertThat(campaigns
                        .named(CampaignScene.NUMBER)
                        .orElseThrow()
                        .vehicles()
                        .values())
                .extracting(InCampaign::order)
                .containsAnyElementsOf(onLine);
    }

    /** Shift after shift, with vehicles among them that came back and others that a campaign looked at. */
    private void theLineGoesOn(int shifts) {
        assertThat(rows(row -> row.number.endsWith("-2"))).as("awaited back").hasSize(2);
        for (int further = 1; further <= shifts; further++) {
            List<String> before = places();
            Instant from = day.shifts().nextBegin(clock.instant()).orElseThrow();
            var shift = new Tally();
            new PlayedShift(rehearsal.present().orElseThrow(), shift)
                    .play(
                            from,
                            day.shiftEnd(from).orElseThrow(),
                            new Running(from, Double.POSITIVE_INFINITY, demo::standing));
            assertThat(shift.moves()).as(from.toString()).isGreaterThan(20);
            assertThat(shift.leftOutInAll()).as(String.valueOf(shift.leftOut())).isLessThan(shift.moves() / 2);
            assertThat(places()).as("nobody stands where it stood a shift ago").doesNotContainAnyElementsOf(before);
        }
        assertThat(rows(row -> row.number.endsWith("-2") && row.phase == Phase.FINISHED))
                .as("came back, went its own way and is finished")
                .isNotEmpty();
    }

    private static List<String> places() {
        return rows(row -> row.phase == Phase.ON_LINE).stream()
                .map(row -> row.number + " at " + row.occupies)
                .toList();
    }

    private static List<WorkOrderRow> rows(Predicate<WorkOrderRow> wanted) {
        return QuarkusTransaction.requiringNew()
                .call(() -> WorkOrderRow.<WorkOrderRow>listAll().stream()
                        .filter(wanted)
                        .toList());
    }

    private void letGo(WorkOrderRow order) {
        int hold = WorkOrder.of(ledger.history(Subject.workOrder(order.number))).orElseThrow().holds().stream()
                .filter(held -> held.reason().equals(WISH))
                .findFirst()
                .orElseThrow()
                .hold();
        holding.release(
                        new Holding.ToRelease(UUID.randomUUID(), order.number, hold, "The operator has seen it"),
                        Actor.of(lineManager(), clock))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons.toString());
                });
    }

    private static String lineManager() {
        return QuarkusTransaction.requiringNew()
                .call(() -> PersonRow.everybody().stream()
                        .filter(row -> row.roleWords().contains(Role.lineManager))
                        .findFirst()
                        .orElseThrow()
                        .number);
    }

    /** The one nearest the begin of the line, so that it stands in nobody's way. */
    private WorkOrderRow somebodyHoldsTheFirstVehicle() {
        WorkOrderRow order = QuarkusTransaction.requiringNew()
                .call(() -> Stream.of("ST-1", "ST-2", "ST-3")
                        .flatMap(station -> WorkOrderRow.occupant(station).stream())
                        .findFirst()
                        .orElseThrow());
        holding.hold(
                        new Holding.ToHold(
                                UUID.randomUUID(),
                                order.number,
                                HoldKind.OPERATOR_WISH,
                                List.of(Stops.WORK, Stops.MOVE),
                                WISH),
                        Actor.of(lineManager(), clock))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons.toString());
                });
        return order;
    }

    private void everyStationIsInOneState(Instant end) {
        var line = look.at(end.minusSeconds(1));
        var numbers = new ArrayList<String>();
        line.rows().forEach(row -> {
            assertThat(row.state()).isNotNull();
            row.standing().ifPresent(standing -> numbers.add(standing.order().number()));
        });
        assertThat(numbers).doesNotHaveDuplicates().hasSizeGreaterThan(3);
    }

    private void nobodysLockIsOnOverNight(Instant end) {
        List<String> onLine = rows(row -> row.phase == Phase.ON_LINE).stream()
                .map(row -> row.number)
                .toList();
        assertThat(onLine)
                .isNotEmpty()
                .allSatisfy(number -> assertThat(Isolation.of(ledger.history(Subject.workOrder(number)))
                                .at(end)
                                .state())
                        .as(number)
                        .isIn(State.LIVE, State.VOID));
    }
}
