package wainbook.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
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
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.permit.PermitSaying.OnPaper;
import wainbook.permit.PermitSaying.PermitClosed;
import wainbook.permit.PermitSaying.PermitHandedBack;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.PermitReceived;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.PermitSaying.WorkStopped;
import wainbook.permit.paper.PaperPermits;
import wainbook.permit.rule.AtHand;
import wainbook.permit.rule.Conflict;
import wainbook.permit.rule.IssueRules;
import wainbook.permit.rule.StepRules;
import wainbook.works.Person;
import wainbook.works.Role;
import wainbook.works.instruments.Instrument;

/** The bounds of what is typed on a permit, which field each fault is at, and what paper and other permits add. */
class PermitBoundsTest {

    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);
    private static final Instant SHIFT_END = Instant.parse("2026-03-10T14:00:00Z");
    private static final String LONGEST = "x".repeat(500);
    private static final String LEADER = "1";
    private static final String ROOFER = "2";
    private static final String ENGINEER = "4";
    private static final String GONE = "6";

    private static final Map<String, Person> PEOPLE = Map.of(
            LEADER, new Person(LEADER, List.of(Role.TEAM_LEADER), false, Map.of()),
            ROOFER, new Person(ROOFER, List.of(Role.TECHNICIAN), false, Map.of()),
            ENGINEER, new Person(ENGINEER, List.of(Role.WORKS_ENGINEER), false, Map.of()),
            GONE, new Person(GONE, List.of(Role.TECHNICIAN), true, Map.of()));

    private static final Map<String, Instrument> GEAR = Map.of(
            "LG-1", gear("LG-1", "lifting-gear"),
            "CL-1", gear("CL-1", "column-lift"),
            "ST-1", gear("ST-1", "stand"),
            "PR-1", gear("PR-1", "pressure-rig"));

    private final Subject bus = Subject.workOrder("WB-1");

    private History stream = History.empty(bus);
    private String work = "mend the roof duct";
    private Optional<String> place = Optional.empty();
    private String receiver = ROOFER;
    private Instant until = SHIFT_END;
    private Set<String> kept = Set.of();
    private List<OnPaper> onPaper = List.of();

    @Test
    void the_work_is_said_in_five_hundred_characters_and_the_place_in_eighty() {
        work = LONGEST;
        place = Optional.of("x".repeat(80));
        assertThat(height()).isEmpty();
        work = LONGEST + "x";
        place = Optional.of("x".repeat(81));
        assertThat(height()).containsExactly("permit.workMissing #work", "permit.placeMissing #place");
        work = "  ";
        place = Optional.of(" ");
        assertThat(height()).containsExactly("permit.workMissing #work", "permit.placeMissing #place");
    }

    @Test
    void it_ends_after_now_and_with_the_shift_at_the_latest() {
        until = NOW.plusMillis(1);
        assertThat(height()).isEmpty();
        until = NOW;
        assertThat(height()).containsExactly("permit.beyondShift #validUntil");
        until = SHIFT_END.plusMillis(1);
        assertThat(height()).containsExactly("permit.beyondShift #validUntil");
    }

    @Test
    void a_fault_of_the_receiver_is_shown_at_the_receiver() {
        receiver = LEADER;
        assertThat(height()).containsExactly("permit.twoPeople #receiver");
        receiver = GONE;
        assertThat(height()).containsExactly("permit.personUnknown #receiver");
    }

    @Test
    void a_precaution_that_is_not_ticked_is_asked_for_at_its_own_field() {
        assertThat(issue(Work.HEIGHT)).containsExactly("permit.precautionMissing #EDGE_PROTECTION");
        assertThat(issue(Work.CONTRACTOR, tick(Precaution.INDUCTION)))
                .containsExactly("permit.precautionMissing #HOST");
    }

    @Test
    void a_lifting_plan_is_words_and_no_more_than_five_hundred_characters() {
        assertThat(lifting("LG-1", LONGEST)).isEmpty();
        assertThat(lifting("LG-1", LONGEST + "x")).containsExactly("permit.nameMissing #LIFTING_PLAN");
        assertThat(lifting("LG-1", " ")).containsExactly("permit.nameMissing #LIFTING_PLAN");
    }

    @Test
    void a_column_lift_serves_as_lifting_gear_and_a_stand_does_not() {
        assertThat(lifting("CL-1", "as drawn")).isEmpty();
        assertThat(lifting("ST-1", "as drawn")).containsExactly("works.instrumentKind #LIFTING_GEAR");
        assertThat(lifting(" ", "as drawn")).containsExactly("permit.nameMissing #LIFTING_GEAR");
    }

    @Test
    void gear_that_the_register_does_not_know_is_asked_for_by_its_kind() {
        List<Reason> against = against(Work.HEIGHT, tick(Precaution.FALL_ARREST, "FA-9"));
        assertThat(against).extracting(Reason::key).containsExactly("works.instrumentUnknown");
        assertThat(against.get(0).arguments()).containsExactly("fall-arrest");
        assertThat(against.get(0).lift()).contains("#FALL_ARREST");
    }

    /** Written here a second time, by hand. */
    @Test
    void each_kind_of_work_has_its_own_precautions() {
        assertThat(Work.HOT_WORK.precautions())
                .containsExactly(
                        Precaution.DRAINED, Precaution.GAS_FREE, Precaution.EXTINGUISHER, Precaution.FIRE_WATCH);
        assertThat(Work.HEIGHT.precautions()).containsExactly(Precaution.EDGE_PROTECTION, Precaution.FALL_ARREST);
        assertThat(Work.LIFTING.precautions())
                .containsExactly(Precaution.LIFTING_GEAR, Precaution.NOBODY_BENEATH, Precaution.LIFTING_PLAN);
        assertThat(Work.STORED_ENERGY.precautions())
                .containsExactly(Precaution.RELEASED, Precaution.BLOCKED, Precaution.PROVED);
        assertThat(Work.CONTRACTOR.precautions()).containsExactly(Precaution.INDUCTION, Precaution.HOST);
    }

    @Test
    void stored_energy_names_its_gear_only_where_some_was_used_and_then_of_the_right_kind() {
        assertThat(storedEnergy(tick(Precaution.RELEASED), tick(Precaution.BLOCKED)))
                .isEmpty();
        assertThat(storedEnergy(tick(Precaution.RELEASED, "PR-1"), tick(Precaution.BLOCKED, "ST-1")))
                .isEmpty();
        assertThat(storedEnergy(tick(Precaution.RELEASED, "PR-1"), tick(Precaution.BLOCKED, "CL-1")))
                .isEmpty();
        assertThat(storedEnergy(tick(Precaution.RELEASED, "ST-1"), tick(Precaution.BLOCKED, "PR-1")))
                .containsExactly("works.instrumentKind #RELEASED", "works.instrumentKind #BLOCKED");
    }

    @Test
    void gas_is_measured_with_an_instrument_where_the_register_has_one_for_gas() {
        Ticked[] hotWork = {
            tick(Precaution.DRAINED),
            tick(Precaution.GAS_FREE),
            tick(Precaution.EXTINGUISHER),
            tick(Precaution.FIRE_WATCH, LEADER)
        };
        kept = Set.of("stand", "torque-wrench");
        assertThat(issue(Work.HOT_WORK, hotWork)).isEmpty();
        kept = Set.of("stand", "gas-detector");
        assertThat(issue(Work.HOT_WORK, hotWork)).containsExactly("permit.nameMissing #GAS_FREE");
    }

    @Test
    void a_host_is_at_work_here_and_not_the_contractor() {
        assertThat(contractor(LEADER)).isEmpty();
        assertThat(contractor("nobody")).containsExactly("permit.personUnknown #HOST");
        assertThat(contractor(GONE)).containsExactly("permit.personUnknown #HOST");
        assertThat(contractor(ROOFER)).containsExactly("permit.notTheReceiver #HOST");
    }

    @Test
    void words_beside_a_precaution_that_names_nothing_are_bounded_too() {
        assertThat(issue(Work.HEIGHT, tick(Precaution.EDGE_PROTECTION, LONGEST)))
                .isEmpty();
        assertThat(issue(Work.HEIGHT, tick(Precaution.EDGE_PROTECTION, LONGEST + "x")))
                .containsExactly("permit.nameMissing #EDGE_PROTECTION");
        assertThat(issue(Work.HEIGHT, tick(Precaution.EDGE_PROTECTION, " "))).isEmpty();
    }

    @Test
    void a_permit_that_is_open_on_paper_counts_like_any_other_and_is_named_by_its_form() {
        onPaper = List.of(paper("F-0007", Work.HOT_WORK, Optional.empty()));
        List<Reason> against = against(Work.HEIGHT, tick(Precaution.EDGE_PROTECTION));
        assertThat(against).extracting(Reason::key).containsExactly("permit.hotWorkAndHeight");
        assertThat(against.get(0).arguments()).containsExactly("F-0007");
    }

    @Test
    void a_paper_permit_stands_as_it_was_taken_over_last_and_is_open_until_it_is_closed() {
        assertThat(PaperPermits.of(stream).all()).isEmpty();
        say(LEADER, paper("F-0007", Work.HEIGHT, Optional.empty()));
        say(LEADER, paper("F-0008", Work.LIFTING, Optional.empty()));
        assertThat(PaperPermits.of(stream).open()).extracting(OnPaper::form).containsExactly("F-0007", "F-0008");
        say(LEADER, paper("F-0007", Work.HEIGHT, Optional.of(NOW)));
        assertThat(PaperPermits.of(stream).open()).extracting(OnPaper::form).containsExactly("F-0008");
        assertThat(PaperPermits.of(stream).all()).extracting(OnPaper::form).containsExactly("F-0007", "F-0008");
        assertThat(Permits.of(stream).all()).as("paper has no number here").isEmpty();
    }

    @Test
    void it_is_received_only_while_nothing_that_was_issued_meanwhile_contradicts_it() {
        say(LEADER, issued(1, Work.HEIGHT));
        say(LEADER, issued(2, Work.LIFTING));
        List<Reason> against = StepRules.against(
                permits().number(1).orElseThrow(),
                Step.RECEIVE,
                Optional.empty(),
                ROOFER,
                List.of(permits().number(2).orElseThrow()),
                atHand(NOW));
        assertThat(against).extracting(Reason::key).containsExactly("permit.liftingAndHeight");
        assertThat(against.get(0).arguments()).containsExactly("2");
    }

    @Test
    void closed_or_handed_back_a_permit_is_handed_back_no_more() {
        say(LEADER, issued(1, Work.HEIGHT));
        say(ROOFER, new PermitReceived(1));
        assertThat(take(Step.HAND_BACK, ROOFER, "")).isEmpty();
        say(ROOFER, new PermitHandedBack(1, Optional.empty()));
        assertThat(take(Step.HAND_BACK, ROOFER, "")).containsExactly("permit.notToHandBack");
        stream = History.empty(bus);
        say(LEADER, issued(1, Work.HEIGHT));
        say(ROOFER, new PermitReceived(1));
        say(LEADER, new PermitClosed(1, Optional.empty()));
        assertThat(take(Step.HAND_BACK, ROOFER, "")).containsExactly("permit.notToHandBack");
    }

    @Test
    void an_engineer_closes_for_the_issuer_with_words_and_nobody_else_does() {
        say(LEADER, issued(1, Work.HEIGHT));
        assertThat(take(Step.CLOSE, ENGINEER, "")).containsExactly("permit.wordsMissing");
        assertThat(take(Step.CLOSE, ENGINEER, LONGEST)).isEmpty();
        assertThat(take(Step.CLOSE, ENGINEER, LONGEST + "x")).containsExactly("permit.wordsMissing");
        assertThat(take(Step.CLOSE, ENGINEER, "  ")).containsExactly("permit.wordsMissing");
        assertThat(take(Step.CLOSE, GONE, "gone home")).containsExactly("permit.ownerOnly");
        assertThat(take(Step.CLOSE, "nobody", "gone home")).containsExactly("permit.ownerOnly");
    }

    @Test
    void hot_work_that_was_never_begun_wants_no_last_look() {
        say(LEADER, issued(1, Work.HOT_WORK));
        assertThat(permits().number(1).orElseThrow().lastLookFrom()).isEmpty();
        assertThat(take(Step.CLOSE, LEADER, "")).isEmpty();
    }

    @Test
    void the_first_word_of_each_kind_stands() {
        say(LEADER, NOW, issued(1, Work.HOT_WORK));
        for (int minute = 1; minute <= 2; minute++) {
            Instant at = NOW.plus(Duration.ofMinutes(minute));
            say(ROOFER, at, new PermitReceived(1));
            say(ROOFER, at, new WorkStopped(1, Optional.empty()));
            say(ROOFER, at, new PermitHandedBack(1, Optional.empty()));
            say(LEADER, at, new PermitClosed(1, Optional.empty()));
        }
        Permit permit = permits().number(1).orElseThrow();
        for (Optional<Entry> entry :
                List.of(permit.received(), permit.stopped(), permit.handedBack(), permit.closed())) {
            assertThat(entry.orElseThrow().moment().at()).isEqualTo(NOW.plus(Duration.ofMinutes(1)));
        }
        assertThat(permit.lastLookFrom()).contains(NOW.plus(Duration.ofMinutes(61)));
    }

    @Test
    void each_state_is_said_as_it_is() {
        say(LEADER, issued(1, Work.HEIGHT));
        assertThat(state(SHIFT_END.minusMillis(1))).isEqualTo(State.WAITS_FOR_RECEIVER);
        assertThat(state(SHIFT_END)).isEqualTo(State.RUN_OUT);
        say(ROOFER, new PermitReceived(1));
        assertThat(state(NOW)).isEqualTo(State.IN_FORCE);
        say(ROOFER, new WorkStopped(1, Optional.empty()));
        assertThat(state(SHIFT_END)).isEqualTo(State.STOPPED);
        say(ROOFER, new PermitHandedBack(1, Optional.empty()));
        assertThat(state(NOW)).isEqualTo(State.HANDED_BACK);
        assertThat(permits().open()).hasSize(1);
        say(LEADER, new PermitClosed(1, Optional.empty()));
        assertThat(state(NOW)).isEqualTo(State.CLOSED);
        assertThat(permits().open()).isEmpty();
    }

    @Test
    void permits_are_numbered_from_one_and_found_by_their_number() {
        assertThat(permits().next()).isEqualTo(1);
        say(LEADER, issued(1, Work.HEIGHT));
        say(LEADER, issued(2, Work.CONTRACTOR));
        assertThat(permits().next()).isEqualTo(3);
        assertThat(permits().number(0)).isEmpty();
        assertThat(permits().number(3)).isEmpty();
        assertThat(permits().number(2).orElseThrow().said().sort()).isEqualTo(Work.CONTRACTOR);
        say(ROOFER, new PermitReceived(2));
        assertThat(permits().number(1).orElseThrow().received()).isEmpty();
        assertThat(permits().number(2).orElseThrow().received()).isPresent();
    }

    @Test
    void each_step_has_its_word_and_leaves_its_own_entry() {
        for (Step step : Step.values()) {
            assertThat(Step.of(step.word())).contains(step);
            assertThat(step.saying(4, Optional.of("why"))).isInstanceOf(step.says());
        }
        assertThat(Step.of("nothing")).isEmpty();
        assertThat(Step.STOP.saying(4, Optional.of("why"))).isEqualTo(new WorkStopped(4, Optional.of("why")));
        assertThat(Step.HAND_BACK.saying(4, Optional.of("why"))).isEqualTo(new PermitHandedBack(4, Optional.of("why")));
        assertThat(Step.CLOSE.saying(4, Optional.of("why"))).isEqualTo(new PermitClosed(4, Optional.of("why")));
    }

    @Test
    void a_permit_lies_with_its_vehicle_or_with_the_works() {
        assertThat(Where.word(bus)).isEqualTo("WB-1");
        assertThat(Where.word(Subject.works())).isEqualTo("_works");
        assertThat(Where.stream("WB-1")).isEqualTo(bus);
        assertThat(Where.stream("_works")).isEqualTo(Subject.works());
        assertThat(Where.stream(Optional.of("WB-1"))).isEqualTo(bus);
        assertThat(Where.stream(Optional.of(" "))).isEqualTo(Subject.works());
        assertThat(Where.stream(Optional.empty())).isEqualTo(Subject.works());
    }

    @Test
    void of_the_work_are_said_only_circumstances() {
        assertThat(Trait.circumstances()).containsExactly(Trait.RAISED, Trait.BENEATH, Trait.FUEL_OPEN);
        assertThat(Conflict.RAISED_AND_BENEATH.one()).isEqualTo(Trait.RAISED);
        assertThat(Conflict.RAISED_AND_BENEATH.other()).isEqualTo(Trait.BENEATH);
    }

    private State state(Instant at) {
        return permits().number(1).orElseThrow().state(at);
    }

    private Permits permits() {
        return Permits.of(stream);
    }

    private List<String> take(Step step, String who, String words) {
        return StepRules.against(
                        permits().number(1).orElseThrow(),
                        step,
                        Optional.of(words).filter(text -> !text.isEmpty()),
                        who,
                        List.of(),
                        atHand(NOW))
                .stream()
                .map(Reason::key)
                .toList();
    }

    private List<String> height() {
        return issue(Work.HEIGHT, tick(Precaution.EDGE_PROTECTION));
    }

    private List<String> lifting(String gear, String plan) {
        return issue(
                Work.LIFTING,
                tick(Precaution.LIFTING_GEAR, gear),
                tick(Precaution.NOBODY_BENEATH),
                tick(Precaution.LIFTING_PLAN, plan));
    }

    private List<String> storedEnergy(Ticked released, Ticked blocked) {
        return issue(Work.STORED_ENERGY, released, blocked, tick(Precaution.PROVED));
    }

    private List<String> contractor(String host) {
        return issue(Work.CONTRACTOR, tick(Precaution.INDUCTION), tick(Precaution.HOST, host));
    }

    private List<String> issue(Work sort, Ticked... ticked) {
        return against(sort, ticked).stream()
                .map(reason -> reason.key() + " " + reason.lift().orElse(""))
                .toList();
    }

    private List<Reason> against(Work sort, Ticked... ticked) {
        var wanted = new PermitIssued(1, sort, place, work, List.of(), List.of(ticked), receiver, until);
        return IssueRules.against(wanted, LEADER, List.of(), atHand(NOW));
    }

    private AtHand atHand(Instant now) {
        return new AtHand(
                now,
                TODAY,
                Optional.of(SHIFT_END),
                Set.of(),
                onPaper,
                number -> Optional.ofNullable(PEOPLE.get(number)),
                code -> Optional.ofNullable(GEAR.get(code)),
                kept);
    }

    private void say(String who, Saying saying) {
        say(who, NOW, saying);
    }

    private void say(String who, Instant at, Saying saying) {
        stream = stream.and(new Entry(
                new UUID(0, stream.number()), bus, stream.number() + 1, Moment.of(who, at), "0".repeat(64), saying));
    }

    private static PermitIssued issued(int number, Work sort) {
        return new PermitIssued(
                number, sort, Optional.empty(), "mend the roof duct", List.of(), List.of(), ROOFER, SHIFT_END);
    }

    private static OnPaper paper(String form, Work sort, Optional<Instant> closedAt) {
        return new OnPaper(
                form,
                EvidenceFile.of(new byte[] {1}, "image/png"),
                new PermitForm(
                        sort,
                        "cut the old bracket",
                        List.of(),
                        List.of(),
                        LEADER,
                        NOW,
                        ROOFER,
                        Optional.of(NOW),
                        SHIFT_END,
                        closedAt,
                        closedAt),
                List.of(),
                LEADER,
                ROOFER);
    }

    private static Ticked tick(Precaution precaution) {
        return new Ticked(precaution, Optional.empty());
    }

    private static Ticked tick(Precaution precaution, String naming) {
        return new Ticked(precaution, Optional.of(naming));
    }

    private static Instrument gear(String code, String kind) {
        return new Instrument(
                code,
                kind,
                kind,
                "kg",
                BigDecimal.ZERO,
                BigDecimal.TEN,
                Optional.empty(),
                Optional.of(TODAY),
                Optional.empty(),
                Optional.empty());
    }
}
