package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.Answer;
import wainbook.engineering.weights.UnladenWeight;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.Standing;
import wainbook.handover.requirement.Requirement;
import wainbook.handover.requirement.Requirements;
import wainbook.handover.requirement.RuleSet;
import wainbook.handover.working.IdentityPoints;
import wainbook.handover.working.RefrigerantCharge;

/** How long papers are valid, and the small workings behind them, against what is published of them. */
class ValiditiesAndPointsTest {

    /**
     * Reg. (EU) 165/2014 art 22 and Reg. (EU) 2016/799 Annex IC 409 to 413, read: an inspection with calibration within 24 months.
     * That the last day counts is this works’ choice. The two sets name the same time.
     */
    @ParameterizedTest
    @CsvSource({
        "GB, GB-18, 2026-11-25, IN_HAND",
        "GB, GB-18, 2026-11-26, EXPIRED",
        "EU, EU-05, 2026-11-25, IN_HAND",
        "EU, EU-05, 2026-11-26, EXPIRED",
        "DE, EU-05, 2026-11-26, EXPIRED"
    })
    void a_tachograph_calibrated_on_25_november_2024_is_valid_to_the_same_day_two_years_on(
            String set, String id, LocalDate handover, Standing expected) {
        Requirement calibration = requirement(set, id, handover, Map.of("tacho_fitted", true));
        Optional<LocalDate> last = calibration.rule().validUntil(LocalDate.of(2024, 11, 25));

        assertThat(last).contains(LocalDate.of(2026, 11, 25));
        assertThat(Standing.of(calibration, Optional.of(inHand(id, last)), handover))
                .isEqualTo(expected);
    }

    /** Directive 2014/45/EU art 5 by its official summary, read; LOLER 1998 reg 9, read; the British annual test from memory. */
    @ParameterizedTest
    @CsvSource({"GB, GB-09, 12", "EU, EU-03, 12", "GB, GB-21, 12", "GB, GB-22, 12"})
    void a_test_and_a_thorough_examination_last_a_year_at_most(String set, String id, int months) {
        Requirement found = requirement(
                set, id, LocalDate.of(2026, 11, 25), Map.of("tail_lift", true, "crane_or_hook_loader", true));
        LocalDate issued = LocalDate.of(2026, 2, 28);

        assertThat(found.rule().validUntil(issued)).contains(issued.plusMonths(months));
    }

    /** No time is named where the law names none: a statement, a notice, a photograph. */
    @Test
    void what_has_no_end_by_law_has_none_here() {
        for (String id : new String[] {"GB-01", "GB-16", "GB-19", "GB-27", "GB-28"}) {
            var facts = Map.of("propulsion_changed", true, "limiter_required", true, "packs", 4);
            assertThat(requirement("GB", id, LocalDate.of(2026, 11, 25), facts)
                            .rule()
                            .validUntil(LocalDate.of(2026, 11, 25)))
                    .as(id)
                    .isEmpty();
        }
    }

    /**
     * Warming potentials of the fourth assessment report, from memory; checks of circuits of 5 to less than 50 t every 12 months
     * by Reg. (EU) 517/2014 as kept, from second-hand accounts. Tonnes by hand: charge times potential.
     */
    @ParameterizedTest
    @CsvSource({"R-404A, 25.493", "R-449A, 9.0805"})
    void a_cold_unit_of_six_and_a_half_kilograms_is_checked_every_year(String refrigerant, double tonnes) {
        var found = results(new RefrigerantCharge().of(new RefrigerantCharge.Inputs(refrigerant, 6.5, false)));

        assertThat(found.co2eTonnes()).isCloseTo(tonnes, within(0.001));
        assertThat(found.everyMonths()).contains(12);
    }

    /** The same sources; the masses are chosen to lie on the borders of 5, 10 and 50 t. */
    @ParameterizedTest
    @CsvSource({
        "R-134a, 3.4965, false, ",
        "R-134a, 3.4966, false, 12",
        "R-134a, 6.9930, true, ",
        "R-134a, 6.9931, true, 12",
        "R-134a, 34.9650, false, 12",
        "R-134a, 34.9651, false, ",
        "R-134a, 34.9651, true, "
    })
    void how_often_a_circuit_is_checked_changes_at_5_and_50_tonnes(
            String refrigerant, double chargeKg, boolean sealed, Integer months) {
        var found = results(new RefrigerantCharge().of(new RefrigerantCharge.Inputs(refrigerant, chargeKg, sealed)));

        assertThat(found.everyMonths()).isEqualTo(Optional.ofNullable(months));
    }

    @Test
    void a_refrigerant_that_nobody_looked_up_is_a_fault() {
        Answer<RefrigerantCharge.Results> answer =
                new RefrigerantCharge().of(new RefrigerantCharge.Inputs("R-999", 1, false));

        assertThat(answer.<String>fold(
                        worked -> "worked", faults -> faults.get(0).message().key(), refusal -> refusal.key()))
                .isEqualTo("engineering.fault.oneOf");
    }

    /**
     * Guidance of the registration authority on radically altered vehicles: 8 points and an unmodified chassis were read in an
     * archived page, the points of each part are from memory. A conversion gives up engine and gearbox: 5 + 2 + 2 + 2.
     */
    @Test
    void a_conversion_keeps_its_mark_with_eleven_points_unless_its_chassis_is_modified() {
        var kept = points(new IdentityPoints.Inputs(false, true, true, false, true, false));
        var cut = points(new IdentityPoints.Inputs(true, true, true, true, true, true));

        assertThat(kept.points()).isEqualTo(11);
        assertThat(kept.pointsAsked()).isEqualTo(8);
        assertThat(kept.keepsMark()).isTrue();
        assertThat(cut.points()).isEqualTo(9);
        assertThat(cut.keepsMark()).isFalse();
    }

    /** The same source: 5 + 2 + 1 are just enough, 5 + 2 are not. */
    @Test
    void eight_points_are_enough_and_seven_are_not() {
        assertThat(points(new IdentityPoints.Inputs(false, true, false, false, false, true)))
                .isEqualTo(new IdentityPoints.Results(8, 8, true));
        assertThat(points(new IdentityPoints.Inputs(false, true, false, false, false, false)))
                .isEqualTo(new IdentityPoints.Results(7, 8, false));
    }

    /** Road Traffic Act 1988 s.190, from memory: accumulators used for propulsion do not count. Four packs of 560 kg, by hand. */
    @Test
    void the_packs_of_a_vehicle_do_not_count_in_its_unladen_weight() {
        var found = results(new UnladenWeight().of(new UnladenWeight.Inputs(9750, 4, 560, 0)));

        assertThat(found.excludedKg()).isEqualTo(2240);
        assertThat(found.unladenKg()).isEqualTo(7510);
    }

    private static IdentityPoints.Results points(IdentityPoints.Inputs kept) {
        return results(new IdentityPoints().of(kept));
    }

    private static Requirement requirement(String set, String id, LocalDate day, Map<String, ?> facts) {
        return new Requirements(RuleSet.named(set).orElseThrow())
                .on(day, facts).stream()
                        .filter(requirement -> requirement.rule().id().equals(id))
                        .findFirst()
                        .orElseThrow();
    }

    private static DocumentNoted inHand(String id, Optional<LocalDate> last) {
        return new DocumentNoted(id, "calibration", "GB", 3, State.IN_HAND, "TC-4711", last, Optional.empty(), "");
    }
}
