package wainbook.permit.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Place;
import wainbook.permit.Permit;
import wainbook.permit.PermitSaying.PermitClosed;
import wainbook.permit.PermitSaying.PermitHandedBack;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.PermitReceived;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.PermitSaying.WorkStopped;
import wainbook.permit.Permits;
import wainbook.permit.Precaution;
import wainbook.permit.State;
import wainbook.permit.Step;
import wainbook.permit.Trait;
import wainbook.permit.Work;
import wainbook.works.Person;
import wainbook.works.Person.Competence;
import wainbook.works.Role;
import wainbook.works.instruments.Instrument;

/** Who may issue, receive, hand back and close a permit, with what, and until when. */
class PermitRulesTest {

    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);
    private static final Instant SHIFT_END = Instant.parse("2026-03-10T14:00:00Z");
    private static final Subject BUS = Subject.workOrder("WB-1");
    private static final String LEADER = "1";
    private static final String WELDER = "2";
    private static final String WATCH = "3";
    private static final String ENGINEER = "4";
    private static final String AUTHORISED = "5";
    private static final String GONE = "6";

    private static final Map<String, Person> PEOPLE = Map.of(
            LEADER, person(LEADER, Role.TEAM_LEADER),
            WELDER, person(WELDER, Role.TECHNICIAN),
            WATCH, person(WATCH, Role.TECHNICIAN),
            ENGINEER, person(ENGINEER, Role.WORKS_ENGINEER),
            AUTHORISED,
                    new Person(
                            AUTHORISED,
                            List.of(Role.TECHNICIAN),
                            false,
                            Map.of(
                                    "PERMIT-ISSUER",
                                    new Competence("PERMIT-ISSUER", 1, TODAY.minusDays(9), TODAY, Optional.empty()))),
            GONE, new Person(GONE, List.of(Role.TECHNICIAN), true, Map.of()));

    private static final Map<String, Instrument> GEAR = Map.of(
            "GD-1", gear("GD-1", "gas-detector", TODAY, Optional.empty()),
            "LG-1", gear("LG-1", "lifting-gear", TODAY, Optional.empty()),
            "LG-2", gear("LG-2", "lifting-gear", TODAY.minusDays(1), Optional.empty()),
            "FA-1", gear("FA-1", "fall-arrest", TODAY.plusDays(30), Optional.empty()),
            "FA-2", gear("FA-2", "fall-arrest", TODAY.plusDays(30), Optional.of("webbing cut")));

    private final List<Entry> said = new ArrayList<>();

    @Test
    void a_hot_work_permit_with_all_it_asks_for_is_issued() {
        assertThat(issue(hotWork(), LEADER)).isEmpty();
        assertThat(issue(hotWork(), ENGINEER)).isEmpty();
        assertThat(issue(hotWork(), AUTHORISED))
                .as("the competence serves on its last day")
                .isEmpty();
    }

    @Test
    void who_holds_neither_the_role_nor_the_competence_issues_nothing() {
        assertThat(issue(hotWork(), WATCH)).containsExactly("permit.mayNotIssue");
        assertThat(issue(hotWork(), "nobody")).containsExactly("permit.mayNotIssue");
    }

    @Test
    void nobody_issues_a_permit_to_themselves_nor_to_somebody_who_left() {
        assertThat(issue(received(hotWork(), LEADER), LEADER)).containsExactly("permit.twoPeople");
        assertThat(issue(received(hotWork(), GONE), LEADER)).containsExactly("permit.personUnknown");
        assertThat(issue(received(hotWork(), "nobody"), LEADER)).containsExactly("permit.personUnknown");
    }

    @Test
    void a_permit_ends_with_the_running_shift_at_the_latest() {
        assertThat(issue(until(hotWork(), SHIFT_END), LEADER)).isEmpty();
        assertThat(issue(until(hotWork(), SHIFT_END.plusSeconds(1)), LEADER)).containsExactly("permit.beyondShift");
        assertThat(issue(until(hotWork(), NOW), LEADER)).containsExactly("permit.beyondShift");
        var offShift = new AtHand(
                NOW,
                TODAY,
                Optional.empty(),
                Set.of(),
                List.of(),
                PermitRulesTest::who,
                PermitRulesTest::which,
                Set.of());
        assertThat(keys(IssueRules.against(hotWork(), LEADER, List.of(), offShift)))
                .containsExactly("permit.offShift");
    }

    @Test
    void each_precaution_of_each_kind_is_missed_when_it_is_not_ticked() {
        for (Work work : Work.values()) {
            assertThat(issue(permit(work, all(work)), LEADER)).as(work.name()).isEmpty();
            for (Set<Precaution> group : work.asks()) {
                List<Ticked> fewer = all(work).stream()
                        .filter(ticked -> !group.contains(ticked.precaution()))
                        .toList();
                assertThat(issue(permit(work, fewer), LEADER))
                        .as(work + " without " + group)
                        .containsExactly("permit.precautionMissing");
            }
        }
    }

    @Test
    void at_height_edge_protection_serves_and_so_does_fall_arrest() {
        assertThat(issue(permit(Work.HEIGHT, List.of(tick(Precaution.EDGE_PROTECTION))), LEADER))
                .isEmpty();
        assertThat(issue(permit(Work.HEIGHT, List.of(tick(Precaution.FALL_ARREST, "FA-1"))), LEADER))
                .isEmpty();
        assertThat(issue(permit(Work.HEIGHT, List.of(tick(Precaution.FALL_ARREST))), LEADER))
                .containsExactly("permit.nameMissing");
    }

    @Test
    void gear_past_its_examination_withdrawn_unknown_or_of_another_kind_is_refused() {
        assertThat(lifting("LG-1")).isEmpty();
        assertThat(lifting("LG-2")).containsExactly("works.instrumentOutOfCalibration");
        assertThat(lifting("LG-9")).containsExactly("works.instrumentUnknown");
        assertThat(lifting("FA-1")).containsExactly("works.instrumentKind");
        assertThat(issue(permit(Work.HEIGHT, List.of(tick(Precaution.FALL_ARREST, "FA-2"))), LEADER))
                .containsExactly("works.instrumentWithdrawn");
    }

    @Test
    void gas_is_measured_with_an_instrument_only_where_the_register_has_one() {
        PermitIssued unmeasured = permit(
                Work.HOT_WORK,
                List.of(
                        tick(Precaution.DRAINED),
                        tick(Precaution.GAS_FREE),
                        tick(Precaution.EXTINGUISHER),
                        tick(Precaution.FIRE_WATCH, WATCH)));
        assertThat(issue(unmeasured, LEADER)).containsExactly("permit.nameMissing");
        var none = new AtHand(
                NOW,
                TODAY,
                Optional.of(SHIFT_END),
                Set.of(),
                List.of(),
                PermitRulesTest::who,
                PermitRulesTest::which,
                Set.of());
        assertThat(IssueRules.against(unmeasured, LEADER, List.of(), none)).isEmpty();
    }

    @Test
    void the_fire_watch_is_somebody_else_than_the_welder() {
        List<Ticked> own = List.of(
                tick(Precaution.DRAINED),
                tick(Precaution.GAS_FREE, "GD-1"),
                tick(Precaution.EXTINGUISHER),
                tick(Precaution.FIRE_WATCH, WELDER));
        assertThat(issue(permit(Work.HOT_WORK, own), LEADER)).containsExactly("permit.notTheReceiver");
    }

    @Test
    void no_hot_work_with_packs_aboard() {
        assertThat(keys(IssueRules.against(hotWork(), LEADER, List.of(), atHand(NOW, Set.of(Trait.PACKS_ABOARD)))))
                .containsExactly("permit.hotWorkAndPacks");
    }

    @Test
    void packs_wait_for_hot_work_until_its_fire_watch_is_over_and_for_no_other_work() {
        assertThat(permits().againstFittingPacks()).isEmpty();
        inForce();
        assertThat(keys(permits().againstFittingPacks())).containsExactly("permit.packsWait");
        assertThat(permits().againstFittingPacks().get(0).lift()).contains("/permits/WB-1/1");
        say(WELDER, NOW, new PermitHandedBack(1, Optional.empty()));
        assertThat(keys(permits().againstFittingPacks())).containsExactly("permit.packsWait");
        say(LEADER, NOW, new PermitClosed(1, Optional.of("cold")));
        assertThat(permits().againstFittingPacks()).isEmpty();
        int next = 1;
        for (Work work : Work.values()) {
            if (work != Work.HOT_WORK) {
                next++;
                say(LEADER, NOW, permit(next, work, all(work)));
            }
        }
        assertThat(permits().againstFittingPacks()).isEmpty();
    }

    @Test
    void a_permit_that_contradicts_itself_or_another_open_one_is_refused_and_names_it() {
        assertThat(issue(with(permit(Work.LIFTING, all(Work.LIFTING)), Trait.BENEATH), LEADER))
                .containsExactly("permit.liftingAndBeneath");
        say(LEADER, NOW, permit(Work.STORED_ENERGY, all(Work.STORED_ENERGY)));
        List<Reason> against = IssueRules.against(hotWork(), LEADER, permits().open(), atHand(NOW, Set.of()));
        assertThat(keys(against)).containsExactly("permit.hotWorkAndStoredEnergy");
        assertThat(against.get(0).arguments()).containsExactly("1");
    }

    @Test
    void the_receiver_alone_receives_and_only_while_it_waits() {
        say(LEADER, NOW, hotWork());
        assertThat(take(Step.RECEIVE, WATCH, NOW, "")).containsExactly("permit.receiverOnly");
        assertThat(take(Step.RECEIVE, WELDER, SHIFT_END, "")).containsExactly("permit.notToReceive");
        assertThat(take(Step.RECEIVE, WELDER, NOW, "")).isEmpty();
        say(WELDER, NOW, new PermitReceived(1));
        assertThat(take(Step.RECEIVE, WELDER, NOW, "")).containsExactly("permit.notToReceive");
    }

    @Test
    void a_permit_is_not_received_when_packs_came_aboard_meanwhile() {
        say(LEADER, NOW, hotWork());
        assertThat(keys(StepRules.against(
                        permit(),
                        Step.RECEIVE,
                        Optional.empty(),
                        WELDER,
                        List.of(),
                        atHand(NOW, Set.of(Trait.PACKS_ABOARD)))))
                .containsExactly("permit.hotWorkAndPacks");
    }

    @Test
    void hot_work_is_closed_sixty_minutes_after_hand_back_with_a_last_look_and_no_sooner() {
        inForce();
        Instant over = NOW.plus(Duration.ofMinutes(90));
        assertThat(take(Step.CLOSE, LEADER, over, "cold")).containsExactly("permit.notHandedBack");
        say(WELDER, over, new PermitHandedBack(1, Optional.empty()));
        Instant lastLook = over.plus(Duration.ofMinutes(60));
        assertThat(permit().lastLookFrom()).contains(lastLook);
        assertThat(take(Step.CLOSE, LEADER, lastLook.minusSeconds(1), "cold")).containsExactly("permit.fireWatch");
        assertThat(take(Step.CLOSE, LEADER, lastLook, "")).containsExactly("permit.lastLookMissing");
        assertThat(take(Step.CLOSE, WELDER, lastLook, "cold")).containsExactly("permit.receiverCannotClose");
        assertThat(take(Step.CLOSE, LEADER, lastLook, "cold")).isEmpty();
        say(LEADER, lastLook, new PermitClosed(1, Optional.of("cold")));
        assertThat(permit().state(lastLook)).isEqualTo(State.CLOSED);
        assertThat(take(Step.CLOSE, LEADER, lastLook, "cold")).containsExactly("permit.closedAlready");
    }

    @Test
    void other_work_is_closed_at_once_and_a_permit_never_received_without_hand_back() {
        say(LEADER, NOW, permit(Work.HEIGHT, List.of(tick(Precaution.EDGE_PROTECTION))));
        assertThat(take(Step.HAND_BACK, WELDER, NOW, "")).containsExactly("permit.notToHandBack");
        assertThat(take(Step.CLOSE, LEADER, NOW, "")).isEmpty();
        say(WELDER, NOW, new PermitReceived(1));
        assertThat(take(Step.CLOSE, LEADER, NOW, "")).containsExactly("permit.notHandedBack");
        say(WELDER, NOW, new PermitHandedBack(1, Optional.empty()));
        assertThat(take(Step.CLOSE, LEADER, NOW, "")).isEmpty();
    }

    @Test
    void anybody_stops_work_in_every_state() {
        for (Saying next : List.of(
                hotWork(),
                new PermitReceived(1),
                new WorkStopped(1, Optional.empty()),
                new PermitHandedBack(1, Optional.empty()),
                new PermitClosed(1, Optional.empty()))) {
            say(LEADER, NOW, next);
            assertThat(take(Step.STOP, "nobody", NOW, "")).isEmpty();
        }
    }

    @Test
    void stopped_or_run_out_work_is_still_handed_back() {
        inForce();
        assertThat(permit().state(SHIFT_END.minusSeconds(1))).isEqualTo(State.IN_FORCE);
        assertThat(permit().state(SHIFT_END)).isEqualTo(State.RUN_OUT);
        assertThat(take(Step.HAND_BACK, WELDER, SHIFT_END, "")).isEmpty();
        say(WATCH, NOW, new WorkStopped(1, Optional.of("smoke")));
        assertThat(permit().state(NOW)).isEqualTo(State.STOPPED);
        assertThat(take(Step.HAND_BACK, WELDER, NOW, "")).isEmpty();
    }

    @Test
    void for_somebody_who_is_away_a_works_engineer_acts_and_says_how_they_know() {
        inForce();
        assertThat(take(Step.HAND_BACK, WATCH, NOW, "all out")).containsExactly("permit.ownerOnly");
        assertThat(take(Step.HAND_BACK, ENGINEER, NOW, "")).containsExactly("permit.wordsMissing");
        assertThat(take(Step.HAND_BACK, ENGINEER, NOW, "walked round it")).isEmpty();
    }

    @Test
    void a_move_ends_a_permit_but_not_the_watch_for_fire() {
        inForce();
        say(LEADER, NOW, permit(2, Work.CONTRACTOR, all(Work.CONTRACTOR)));
        say(ENGINEER, NOW, moved());
        assertThat(permits().all()).extracting(one -> one.state(NOW)).containsOnly(State.ENDED_BY_MOVE);
        assertThat(permits().open()).extracting(Permit::number).containsExactly(1);
        assertThat(permit().lastLookFrom()).contains(NOW.plus(Permit.FIRE_WATCH));
        assertThat(take(Step.HAND_BACK, WELDER, NOW, "")).containsExactly("permit.notToHandBack");
        assertThat(take(Step.CLOSE, LEADER, NOW.plus(Permit.FIRE_WATCH), "cold"))
                .isEmpty();
    }

    private void inForce() {
        say(LEADER, NOW, hotWork());
        say(WELDER, NOW, new PermitReceived(1));
    }

    private void say(String who, Instant at, Saying saying) {
        said.add(
                new Entry(new UUID(0, said.size()), BUS, said.size() + 1L, Moment.of(who, at), "0".repeat(64), saying));
    }

    private Permits permits() {
        return Permits.of(new History(BUS, said));
    }

    private Permit permit() {
        return permits().number(1).orElseThrow();
    }

    private List<String> take(Step step, String who, Instant at, String words) {
        Optional<String> typed = Optional.of(words).filter(text -> !text.isEmpty());
        return keys(StepRules.against(permit(), step, typed, who, List.of(), atHand(at, Set.of())));
    }

    private static List<String> issue(PermitIssued wanted, String issuer) {
        return keys(IssueRules.against(wanted, issuer, List.of(), atHand(NOW, Set.of())));
    }

    private static List<String> lifting(String gear) {
        return issue(
                permit(
                        Work.LIFTING,
                        List.of(
                                tick(Precaution.LIFTING_GEAR, gear),
                                tick(Precaution.NOBODY_BENEATH),
                                tick(Precaution.LIFTING_PLAN, "two slings, one signals"))),
                LEADER);
    }

    private static AtHand atHand(Instant now, Set<Trait> ofVehicle) {
        return new AtHand(
                now,
                TODAY,
                Optional.of(SHIFT_END),
                ofVehicle,
                List.of(),
                PermitRulesTest::who,
                PermitRulesTest::which,
                Set.of("gas-detector"));
    }

    private static Optional<Person> who(String number) {
        return Optional.ofNullable(PEOPLE.get(number));
    }

    private static Optional<Instrument> which(String code) {
        return Optional.ofNullable(GEAR.get(code));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }

    private static PermitIssued hotWork() {
        return permit(Work.HOT_WORK, all(Work.HOT_WORK));
    }

    private static PermitIssued permit(Work work, List<Ticked> precautions) {
        return permit(1, work, precautions);
    }

    private static PermitIssued permit(int number, Work work, List<Ticked> precautions) {
        return new PermitIssued(
                number, work, Optional.empty(), "cut the old bracket", List.of(), precautions, WELDER, SHIFT_END);
    }

    private static PermitIssued received(PermitIssued old, String receiver) {
        return new PermitIssued(
                1, old.sort(), old.place(), old.work(), List.of(), old.precautions(), receiver, SHIFT_END);
    }

    private static PermitIssued until(PermitIssued old, Instant end) {
        return new PermitIssued(1, old.sort(), old.place(), old.work(), List.of(), old.precautions(), WELDER, end);
    }

    private static PermitIssued with(PermitIssued old, Trait trait) {
        return new PermitIssued(
                1, old.sort(), old.place(), old.work(), List.of(trait), old.precautions(), WELDER, SHIFT_END);
    }

    private static List<Ticked> all(Work work) {
        return Arrays.stream(Precaution.values())
                .filter(work.precautions()::contains)
                .map(one -> new Ticked(
                        one,
                        switch (one) {
                            case GAS_FREE -> Optional.of("GD-1");
                            case FIRE_WATCH, HOST -> Optional.of(WATCH);
                            case FALL_ARREST -> Optional.of("FA-1");
                            case LIFTING_GEAR -> Optional.of("LG-1");
                            case LIFTING_PLAN -> Optional.of("two slings, one signals");
                            default -> Optional.empty();
                        }))
                .toList();
    }

    private static Ticked tick(Precaution precaution) {
        return new Ticked(precaution, Optional.empty());
    }

    private static Ticked tick(Precaution precaution, String naming) {
        return new Ticked(precaution, Optional.of(naming));
    }

    private static Moved moved() {
        return new Moved(
                Direction.OFF_LINE,
                new Place(Optional.of("strip"), "ST-1"),
                new Place(Optional.empty(), "YARD"),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    private static Person person(String number, Role role) {
        return new Person(number, List.of(role), false, Map.of());
    }

    private static Instrument gear(String code, String kind, LocalDate due, Optional<String> withdrawn) {
        return new Instrument(
                code,
                kind,
                kind,
                "kg",
                BigDecimal.ZERO,
                BigDecimal.TEN,
                Optional.empty(),
                Optional.of(due),
                withdrawn,
                Optional.empty());
    }
}
