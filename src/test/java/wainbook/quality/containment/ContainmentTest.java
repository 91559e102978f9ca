package wainbook.quality.containment;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.quality.QualitySaying;
import wainbook.quality.QualitySaying.Basis;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Window;
import wainbook.quality.QualitySaying.Word;
import wainbook.quality.containment.Deciding.Checked;
import wainbook.quality.containment.basis.BasisRow;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Held;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Voided;
import wainbook.works.AfterWithdrawal;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.ToolChecked;
import wainbook.works.WorksSaying.WithdrawalCause;

/** One entry puts an instrument in doubt; every reading made with it is found, judged, and stays open until it is decided. */
@QuarkusTest
@Tag("database")
class ContainmentTest {

    @Inject
    AfterWithdrawal after;

    @Inject
    Opening opening;

    @Inject
    WorkingOut workingOut;

    @Inject
    Containments containments;

    @Inject
    Deciding deciding;

    @Inject
    Closing closing;

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    private WrenchInDoubt wrench;

    @BeforeEach
    void a_wrench_that_was_good() {
        Cast.assemble();
        wrench = WrenchInDoubt.calibrated();
    }

    @Test
    void the_worked_example_of_twelve_readings_comes_out_of_the_record() {
        Subject bus = vehicle(0);
        twelveReadings(bus);
        Containment opened = failed(35);

        VehicleDoubt doubt = doubt(bus, opened);
        assertThat(doubt.readings()).hasSize(12);
        assertThat(doubt.count(Sureness.SURE_OUT)).isEqualTo(1);
        assertThat(doubt.count(Sureness.POSSIBLE)).isEqualTo(6);
        assertThat(doubt.count(Sureness.SAFE)).isEqualTo(5);
        assertThat(doubt.readings().get(0).said().reading()).contains(new BigDecimal("108.2"));
        assertThat(doubt.readings().subList(1, 3))
                .extracting(reading -> reading.said().reading().orElseThrow().toPlainString())
                .as("the two that lie outside if it drifted evenly come before the other possible ones")
                .containsExactlyInAnyOrder("54.9", "166.5");
        assertThat(opened.vehicles())
                .singleElement()
                .satisfies(touched -> assertThat(touched.order()).isEqualTo(bus.code()));
        assertThat(opened.said().window().from()).isEqualTo(wrench.day0());
    }

    @Test
    void told_twice_it_makes_nothing_twice() {
        Subject bus = vehicle(0);
        twelveReadings(bus);
        Entry cause = wrench.say(35, wrench.calibration(35, WrenchInDoubt.FOUND, WrenchInDoubt.GOOD));
        after.inDoubt(wrench.code(), cause, engineer());
        long instrument = ledger.history(Subject.instrument(wrench.code())).number();
        long vehicle = ledger.history(bus).number();
        after.inDoubt(wrench.code(), cause, Actor.of(Cast.WORKS_ENGINEER.number(), clock));
        assertThat(ledger.history(Subject.instrument(wrench.code())).number()).isEqualTo(instrument);
        assertThat(ledger.history(bus).number()).isEqualTo(vehicle);
        assertThat(Containment.of(ledger.history(Subject.instrument(wrench.code()))))
                .hasSize(1);
    }

    @Test
    void what_broke_off_is_shown_as_lacking_and_made_good_by_a_button() {
        Entry cause = wrench.say(35, withdrawn(WithdrawalCause.LOST));
        assertThat(containments.unopened())
                .extracting(Containments.Unopened::entry)
                .contains(cause);
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        assertThat(engineer.page("/quality/containments")).contains(wrench.code(), "Open it now");
        Map<String, Object> form = new java.util.LinkedHashMap<>(engineer.form("/quality/containments"));
        form.put("instrument", wrench.code());
        form.put("entry", cause.id().toString());
        assertThat(engineer.send("/quality/containments/unopened", form).statusCode())
                .isEqualTo(303);
        assertThat(containments.unopened())
                .extracting(Containments.Unopened::entry)
                .doesNotContain(cause);
    }

    @Test
    void a_vehicle_in_the_works_is_held_for_class_A_until_its_last_reading_is_decided() {
        Subject bus = vehicle(0);
        wrench.say(bus, 20, wrench.tightened("BUS-A", JointClass.A, "108", "132", "112.0", "112.5"));
        Containment opened = failed(35);
        WorkOrder held = order(bus);
        assertThat(held.holds()).singleElement().satisfies(hold -> {
            assertThat(hold.stops()).containsExactly(Stops.SIGN, Stops.MOVE);
            assertThat(hold.reason()).contains(opened.code());
        });
        VehicleDoubt doubt = doubt(bus, opened);
        done(decide(bus, opened, List.of(doubt.open().get(0)), Disposition.ACCEPTED, Checked.NOTHING));
        assertThat(order(bus).holds()).hasSize(1);
        done(decide(bus, opened, doubt(bus, opened).open(), Disposition.REPLACED, Checked.NOTHING));
        assertThat(order(bus).holds()).isEmpty();
        assertThat(ledger.history(bus)
                        .last(wainbook.order.OrderSaying.HoldReleased.class)
                        .orElseThrow()
                        .reason())
                .contains(opened.code());
    }

    @Test
    void class_B_is_an_open_matter_and_holds_nothing() {
        Subject bus = vehicle(0);
        wrench.say(bus, 20, wrench.tightened("BUS-B", JointClass.B, "108", "132", "112.0"));
        Containment opened = failed(35);
        assertThat(order(bus).holds()).isEmpty();
        List<Map<String, Object>> matters = Cast.AUDITOR
                .asks()
                .queryParam("order", bus.code())
                .get("/api/v1/matters")
                .jsonPath()
                .getList("$");
        assertThat(matters)
                .singleElement()
                .satisfies(matter -> assertThat(matter)
                        .containsEntry("sort", "CONTAINMENT")
                        .containsEntry("bars", "handing over")
                        .containsEntry("title", "containment " + opened.code()));
    }

    @Test
    void a_lost_wrench_leaves_everything_possible_until_figures_come() {
        Subject bus = vehicle(0);
        twelveReadings(bus);
        Entry lost = wrench.say(35, withdrawn(WithdrawalCause.LOST));
        after.inDoubt(wrench.code(), lost, engineer());
        Containment opened = only();
        assertThat(doubt(bus, opened).count(Sureness.POSSIBLE)).isEqualTo(12);
        assertThat(doubt(bus, opened).readings())
                .allMatch(reading -> reading.said().ground() == Ground.NO_FIGURES);
        assertThat(page(opened)).contains("Nothing can be worked out").contains("points as found");

        VehicleDoubt.Reading first = doubt(bus, opened).open().get(0);
        done(decide(bus, opened, List.of(first), Disposition.REPLACED, Checked.NOTHING));
        Entry found = wrench.say(36, wrench.calibration(36, WrenchInDoubt.FOUND, WrenchInDoubt.GOOD));
        after.inDoubt(wrench.code(), found, engineer());
        after.inDoubt(wrench.code(), found, engineer());

        assertThat(Containment.of(ledger.history(Subject.instrument(wrench.code()))))
                .hasSize(1);
        VehicleDoubt worked = doubt(bus, opened);
        assertThat(worked.count(Sureness.SURE_OUT)).isEqualTo(1);
        assertThat(worked.count(Sureness.POSSIBLE)).isEqualTo(6);
        assertThat(worked.readings().stream()
                        .filter(reading -> reading.settled().isPresent()))
                .as("what was decided stays decided")
                .hasSize(1);
    }

    @Test
    void a_wrench_found_as_good_as_it_was_releases_what_it_held() {
        Subject bus = vehicle(0);
        wrench.say(bus, 20, wrench.tightened("BUS-A", JointClass.A, "108", "132", "120"));
        after.inDoubt(wrench.code(), wrench.say(35, withdrawn(WithdrawalCause.LOST)), engineer());
        Containment opened = only();
        assertThat(order(bus).holds()).hasSize(1);
        Entry fit = wrench.say(36, wrench.calibration(36, WrenchInDoubt.GOOD, List.of()));
        done(workingOut.workOut(only(), fit, engineer()));
        assertThat(doubt(bus, opened).open()).isEmpty();
        assertThat(order(bus).holds()).isEmpty();
    }

    @Test
    void a_voided_reading_is_found_and_marked() {
        Subject bus = vehicle(0);
        Entry entry = wrench.say(bus, 20, wrench.tightened("BUS-C", JointClass.C, "108", "132", "112.0"));
        wrench.say(bus, 21, new Voided(entry.id(), "OWN-SHEET/BUS-C", "wrong vehicle"));
        Containment opened = failed(35);
        assertThat(doubt(bus, opened).readings())
                .singleElement()
                .satisfies(reading -> assertThat(reading.said().voided()).isTrue());
    }

    @Test
    void nothing_outside_the_window_and_nothing_of_another_wrench_is_touched() {
        Subject before = vehicle(0);
        wrench.say(before, 5, wrench.tightened("BUS-A", JointClass.A, "108", "132", "112.0"));
        wrench.say(10, wrench.calibration(10, WrenchInDoubt.GOOD, List.of()));
        Subject other = vehicle(0);
        wrench.say(
                other,
                20,
                new WrenchInDoubt("TW-OTHER", wrench.day0()).tightened("BUS-A", JointClass.A, "108", "132", "112.0"));
        Containment opened = failed(35);
        assertThat(opened.vehicles()).isEmpty();
        assertThat(ledger.history(before).saying(QualitySaying.class)).isEmpty();
        assertThat(page(opened)).contains("No vehicle is touched");
    }

    @Test
    void tools_checked_on_it_are_the_next_in_the_chain() {
        WrenchInDoubt tool = WrenchInDoubt.calibrated();
        tool.say(
                12,
                new ToolChecked(
                        wrench.code(),
                        new BigDecimal("120"),
                        List.of(new BigDecimal("119.5")),
                        new BigDecimal("0.4"),
                        new BigDecimal("2"),
                        new BigDecimal("4"),
                        true));
        Containment opened = failed(35);
        assertThat(opened.said().chain()).singleElement().satisfies(next -> {
            assertThat(next.tool()).isEqualTo(tool.code());
            assertThat(next.checks()).isEqualTo(1);
        });
        assertThat(page(opened)).contains("Open one for " + tool.code());
    }

    @Test
    void a_reading_surely_out_is_never_accepted_where_somebody_may_be_hurt() {
        Subject bus = vehicle(0);
        wrench.say(bus, 31, wrench.tightened("BUS-A", JointClass.A, "108", "132", "108.2"));
        Containment opened = failed(35);
        Outcome<Entry> outcome = decide(bus, opened, doubt(bus, opened).open(), Disposition.ACCEPTED, Checked.NOTHING);
        assertThat(outcome.reasons()).extracting(Reason::key).containsExactly("quality.notAccepted");
    }

    @Test
    void a_re_check_names_who_measured_with_what_and_an_instrument_in_doubt_cannot_serve() {
        Subject bus = vehicle(0);
        wrench.say(bus, 31, wrench.tightened("BUS-A", JointClass.A, "108", "132", "108.2"));
        Containment opened = failed(35);
        List<VehicleDoubt.Reading> open = doubt(bus, opened).open();
        Entry lost = wrench.say(36, withdrawn(WithdrawalCause.LOST));
        after.inDoubt(wrench.code(), lost, engineer());
        assertThat(decide(bus, opened, open, Disposition.RE_CHECKED, checked(wrench.code(), "115", "119"))
                        .reasons())
                .extracting(Reason::key)
                .contains("quality.instrumentInDoubt", "works.instrumentWithdrawn");
        assertThat(decide(bus, opened, open, Disposition.RE_CHECKED, Checked.NOTHING)
                        .reasons())
                .extracting(Reason::key)
                .containsExactlyInAnyOrder(
                        "quality.personMissing", "quality.instrumentMissing", "quality.figuresMissing");

        WrenchInDoubt good = WrenchInDoubt.calibrated();
        assertThat(decide(bus, opened, open, Disposition.RE_CHECKED, checked(good.code(), "107", "119"))
                        .reasons())
                .extracting(Reason::key)
                .containsExactly("quality.figuresOutside");
        done(decide(bus, opened, open, Disposition.RENEWED, checked(good.code(), "115", "119")));
        assertThat(doubt(bus, opened).open()).isEmpty();
        assertThat(BasisRow.<BasisRow>list("instrument", good.code()))
                .as("the re-check is itself found when that instrument fails")
                .hasSize(1);
    }

    @Test
    void a_new_entry_at_the_vehicle_settles_a_reading_of_the_same_joint_only() {
        Subject bus = vehicle(0);
        wrench.say(bus, 31, wrench.tightened("BUS-A", JointClass.A, "108", "132", "108.2"));
        Containment opened = failed(35);
        List<VehicleDoubt.Reading> open = doubt(bus, opened).open();
        WrenchInDoubt good = WrenchInDoubt.calibrated();
        Entry other = good.say(bus, 40, good.tightened("BUS-B", JointClass.A, "108", "132", "120"));
        Entry again = good.say(bus, 40, good.tightened("BUS-A", JointClass.A, "108", "132", "120"));
        assertThat(decide(bus, opened, open, Disposition.RE_CHECKED, entry(other.number()))
                        .reasons())
                .extracting(Reason::key)
                .containsExactly("quality.entryOfOtherItem");
        assertThat(decide(bus, opened, open, Disposition.RE_CHECKED, entry(1)).reasons())
                .extracting(Reason::key)
                .containsExactly("quality.entryPassesNothing");
        done(decide(bus, opened, open, Disposition.RE_CHECKED, entry(again.number())));
        assertThat(doubt(bus, opened)
                        .readings()
                        .get(0)
                        .decision()
                        .orElseThrow()
                        .recheck()
                        .orElseThrow())
                .satisfies(check -> {
                    assertThat(check.by()).isEqualTo(Cast.TECHNICIAN.number());
                    assertThat(check.instrument()).contains(good.code());
                });
    }

    @Test
    void closing_is_refused_while_a_reading_is_open_and_names_it() {
        Subject bus = vehicle(0);
        Entry entry = wrench.say(bus, 20, wrench.tightened("BUS-A", JointClass.A, "108", "132", "112.0", "120"));
        Containment opened = failed(35);
        assertThat(close(opened).reasons()).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("quality.readingsOpen");
            assertThat(reason.arguments()).containsExactly(bus.code(), "1", entry.number() + "/1");
        });
        done(decide(bus, opened, doubt(bus, opened).open(), Disposition.REPLACED, Checked.NOTHING));
        done(close(opened));
        assertThat(only().isOpen()).isFalse();
        assertThat(page(opened)).contains(opened.code() + ": closed");
    }

    @Test
    void the_letter_for_a_vehicle_handed_over_names_the_operator_and_no_person() {
        Subject bus = vehicle(0);
        wrench.say(bus, 20, wrench.tightened("BUS-A", JointClass.A, "108", "132", "112.0"));
        wrench.say(bus, 25, new HandedOver("OP-01", List.of()));
        Containment opened = failed(35);
        assertThat(order(bus).holds())
                .as("a vehicle that is gone cannot be held")
                .isEmpty();
        String path = doubt(bus, opened).path(bus.code());
        String letter = Browsing.as(Cast.QUALITY_ENGINEER).page(path + "/letter");
        String main = letter.substring(letter.indexOf("<main"), letter.indexOf("</main>"));
        assertThat(main).contains("Vale and Fen Community Buses", "take this vehicle out of use", opened.code());
        for (Cast person : Cast.values()) {
            assertThat(main).doesNotContain(person.fullName(), ">" + person.number() + "<");
        }
        assertThat(decide(bus, opened, doubt(bus, opened).open(), Disposition.BY_OPERATOR, Checked.NOTHING)
                        .reasons())
                .extracting(Reason::key)
                .containsExactly("quality.notAnswered");
        done(note(bus, opened, Word.INFORMED, "letter sent"));
        done(note(bus, opened, Word.ANSWERED, "renewed in their workshop"));
        done(decide(bus, opened, doubt(bus, opened).open(), Disposition.BY_OPERATOR, Checked.NOTHING));
        assertThat(doubt(bus, opened).open()).isEmpty();
    }

    @Test
    void a_bad_lot_touches_every_vehicle_that_has_it() {
        String lot = "L" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        Subject bus = vehicle(0);
        Subject other = vehicle(0);
        Subject free = vehicle(0);
        wrench.say(bus, 3, lot("BOLTS-M12", lot));
        wrench.say(other, 3, lot("BOLTS-M12", lot));
        wrench.say(free, 3, lot("BOLTS-M12", lot + "X"));
        Containment opened = asked(about(Sort.LOT, lot), Optional.empty(), true);
        assertThat(opened.vehicles())
                .extracting(touched -> touched.order())
                .containsExactlyInAnyOrder(bus.code(), other.code());
        assertThat(doubt(bus, opened).open()).hasSize(1);
        assertThat(order(bus).holds())
                .as("the person who opened it held them all")
                .hasSize(1);
        assertThat(opened.opened().subject()).isEqualTo(Subject.works());
    }

    @Test
    void a_serial_is_found_on_the_vehicle_that_has_it() {
        String serial = "S" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        Subject bus = vehicle(0);
        wrench.say(bus, 3, confirmed("OWN-SHEET", 1, "before", Optional.empty()));
        wrench.say(
                bus,
                3,
                new StationSaying.SerialRead(
                        new About("strip", "OWN-SHEET", 1, "pump", List.of()),
                        basis(Optional.empty()),
                        "PUMP",
                        serial));
        Containment opened = asked(about(Sort.LOT, serial), Optional.empty(), false);
        assertThat(doubt(bus, opened).readings())
                .extracting(reading -> reading.said().item())
                .containsExactly("OWN-SHEET/pump");
    }

    @Test
    void a_wrong_revision_touches_entries_made_under_it() {
        String sheet = "WR-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        wrench.say(Subject.checkSheet(sheet), 1, new wainbook.works.WorksSaying.CodeSet("stands for any entry"));
        Subject bus = vehicle(0);
        wrench.say(bus, 3, confirmed(sheet, 1, "first", Optional.empty()));
        wrench.say(bus, 3, confirmed(sheet, 2, "first", Optional.empty()));
        wrench.say(bus, 3, confirmed(sheet, 2, "second", Optional.empty()));
        var about = new QualitySaying.About(
                Sort.REVISION, sheet, Optional.empty(), Optional.of(2), Optional.of("second"), Optional.empty());
        Containment opened = asked(about, Optional.empty(), false);
        assertThat(doubt(bus, opened).readings()).singleElement().satisfies(reading -> {
            assertThat(reading.said().item()).isEqualTo(sheet + "/second");
            assertThat(reading.said().ground()).isEqualTo(Ground.RESTS_ON_IT);
        });
    }

    @Test
    void an_invalid_competence_touches_what_was_allowed_on_it_in_the_period() {
        Subject bus = vehicle(0);
        String competence = "welding-" + UUID.randomUUID().toString().substring(0, 6);
        Optional<Held> held = Optional.of(new Held(competence, 0, LocalDate.of(2030, 1, 1)));
        wrench.say(bus, 3, confirmed("OWN-SHEET", 1, "early", held));
        wrench.say(bus, 10, confirmed("OWN-SHEET", 1, "within", held));
        wrench.say(bus, 11, confirmed("OWN-SHEET", 1, "without", Optional.empty()));
        var about = new QualitySaying.About(
                Sort.COMPETENCE,
                Cast.TECHNICIAN.number(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(competence));
        Instant from = wrench.day0().plusSeconds(8 * 86_400L);
        Containment opened = asked(about, Optional.of(new Window(from, clock.instant(), Basis.ASKED)), false);
        assertThat(doubt(bus, opened).readings())
                .extracting(reading -> reading.said().item())
                .containsExactly("OWN-SHEET/within");
    }

    @Test
    void what_would_touch_nothing_is_not_opened() {
        Outcome<Entry> outcome = opening.open(
                new Opening.ToOpen(
                        UUID.randomUUID(), about(Sort.LOT, "NO-SUCH-LOT"), Optional.empty(), "cracked", false),
                engineer());
        assertThat(outcome.reasons()).extracting(Reason::key).containsExactly("quality.nothingTouched");
    }

    private void twelveReadings(Subject bus) {
        record Reading(int day, String joint, String read) {}
        Map<String, List<String>> limits =
                Map.of("P", List.of("108", "132"), "Q", List.of("54", "66"), "R", List.of("162", "198"));
        List.of(
                        new Reading(2, "P", "121.4"),
                        new Reading(4, "R", "181.0"),
                        new Reading(6, "Q", "60.2"),
                        new Reading(9, "P", "112.0"),
                        new Reading(12, "P", "118.9"),
                        new Reading(15, "Q", "55.6"),
                        new Reading(18, "R", "166.5"),
                        new Reading(21, "P", "119.6"),
                        new Reading(25, "P", "113.1"),
                        new Reading(28, "R", "169.8"),
                        new Reading(31, "P", "108.2"),
                        new Reading(34, "Q", "54.9"))
                .forEach(one -> wrench.say(
                        bus,
                        one.day(),
                        wrench.tightened(
                                one.joint(),
                                JointClass.A,
                                limits.get(one.joint()).get(0),
                                limits.get(one.joint()).get(1),
                                one.read())));
    }

    /** Found unfit at its calibration, and told. */
    private Containment failed(int day) {
        Entry cause = wrench.say(day, wrench.calibration(day, WrenchInDoubt.FOUND, WrenchInDoubt.GOOD));
        after.inDoubt(wrench.code(), cause, engineer());
        return only();
    }

    private Containment only() {
        List<Containment> all = Containment.of(ledger.history(Subject.instrument(wrench.code())));
        assertThat(all).isNotEmpty();
        return all.get(0);
    }

    private Containment asked(QualitySaying.About about, Optional<Window> window, boolean holdsAll) {
        return opening.open(
                        new Opening.ToOpen(UUID.randomUUID(), about, window, "found in the yard", holdsAll), engineer())
                .fold(
                        entry -> containments
                                .named(((DoubtOpened) entry.saying()).containment())
                                .orElseThrow(),
                        reasons -> {
                            throw new AssertionError(reasons);
                        });
    }

    private static QualitySaying.About about(Sort sort, String code) {
        return new QualitySaying.About(
                sort, code, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** A bus of a test's own, received so many days after the wrench was calibrated. */
    private Subject vehicle(int day) {
        String unique =
                UUID.randomUUID().toString().replace("-", "").substring(0, 8).toUpperCase(Locale.ROOT);
        Subject bus = Subject.workOrder("QD-" + unique);
        wrench.say(
                bus,
                day,
                new Ordered(
                        "Vale and Fen Community Buses",
                        "bus-12m",
                        "bus-12m",
                        "BUS-12M",
                        List.of("strip", "fitting"),
                        LocalDate.of(2027, 2, 12)));
        wrench.say(
                bus,
                day,
                new DonorReceived(
                        "WBQD00000" + unique.replace('O', '0'),
                        "QD" + unique.substring(0, 2) + " " + unique.substring(2, 5),
                        400_000,
                        new Place(Optional.of("intake"), "IN-1"),
                        new Binding("intake", "INTAKE-BUS", 1)));
        return bus;
    }

    private static LotUsed lot(String part, String lot) {
        return new LotUsed(new About("strip", "OWN-SHEET", 1, "bolts", List.of()), basis(Optional.empty()), part, lot);
    }

    private static StationSaying.Confirmed confirmed(String sheet, int revision, String item, Optional<Held> held) {
        return new StationSaying.Confirmed(new About("strip", sheet, revision, item, List.of()), basis(held));
    }

    private static StationSaying.Basis basis(Optional<Held> held) {
        return new StationSaying.Basis(Condition.NONE, held, Optional.empty());
    }

    private static InstrumentWithdrawn withdrawn(WithdrawalCause cause) {
        return new InstrumentWithdrawn(cause, "not on its hook", Optional.empty());
    }

    private Actor engineer() {
        return Actor.of(Cast.QUALITY_ENGINEER.number(), clock);
    }

    private VehicleDoubt doubt(Subject vehicle, Containment containment) {
        return VehicleDoubts.of(ledger.history(vehicle)).of(containment.code()).orElseThrow();
    }

    private WorkOrder order(Subject vehicle) {
        return WorkOrder.of(ledger.history(vehicle)).orElseThrow();
    }

    private Outcome<Entry> decide(
            Subject vehicle,
            Containment containment,
            List<VehicleDoubt.Reading> readings,
            Disposition disposition,
            Checked checked) {
        return deciding.decide(
                new Deciding.ToDecide(
                        UUID.randomUUID(),
                        vehicle.code(),
                        containment.code(),
                        readings.stream().map(reading -> reading.said().key()).toList(),
                        disposition,
                        "looked at it",
                        checked),
                engineer());
    }

    private static Checked checked(String with, String least, String most) {
        return new Checked(
                Optional.empty(),
                Optional.of(Cast.TECHNICIAN.number()),
                Optional.of(with),
                Optional.of(new BigDecimal(least)),
                Optional.of(new BigDecimal(most)));
    }

    private static Checked entry(long number) {
        return new Checked(Optional.of(number), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private Outcome<Entry> note(Subject vehicle, Containment containment, Word word, String what) {
        return deciding.note(
                new Deciding.ToNote(UUID.randomUUID(), vehicle.code(), containment.code(), word, what), engineer());
    }

    private Outcome<Entry> close(Containment containment) {
        return closing.close(
                new Closing.ToClose(
                        UUID.randomUUID(), containment.opened().subject(), containment.code(), "all put right"),
                engineer());
    }

    private static String page(Containment containment) {
        return Browsing.as(Cast.QUALITY_ENGINEER).page("/quality/containments/" + containment.code());
    }

    private static void done(Outcome<Entry> outcome) {
        outcome.fold(entry -> entry, reasons -> {
            throw new AssertionError(reasons);
        });
    }
}
