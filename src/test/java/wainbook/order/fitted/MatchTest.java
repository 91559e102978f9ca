package wainbook.order.fitted;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.order.duty.Chosen;
import wainbook.order.fitted.Match.Verdict;
import wainbook.page.Words;
import wainbook.process.component.Component;

class MatchTest {

    private static final Planned FOUR = new Planned(List.of("PACK-1", "PACK-2", "PACK-3", "PACK-4", "MOTOR", "PDU"));

    @Test
    void a_vehicle_as_it_was_specified_leaves() {
        assertThat(match(4, FOUR, fitted(4, "PK-58", "MOTOR")).against()).isEmpty();
    }

    @Test
    void a_pack_more_or_fewer_is_told_in_numbers() {
        Match fewer = match(5, FOUR, fitted(4, "PK-58", "MOTOR"));

        assertThat(fewer.lines().get(0).verdict()).isEqualTo(Verdict.FEWER);
        assertThat(text(fewer.against().get(0)))
                .contains("5 packs PK-58 are specified, and 4 are fitted", "choose the specification anew");
        assertThat(match(3, FOUR, fitted(4, "PK-58", "MOTOR")).lines().get(0).verdict())
                .isEqualTo(Verdict.MORE);
    }

    @Test
    void packs_of_another_type_are_named_by_serial_and_type() {
        Match other = match(4, FOUR, fitted(4, "PS-41", "MOTOR"));

        assertThat(other.lines().get(0).verdict()).isEqualTo(Verdict.OTHER_TYPE);
        assertThat(text(other.against().get(0))).contains("PK1 (PS-41)");
    }

    @Test
    void packs_whose_type_nobody_recorded_are_counted_and_said() {
        Match.Line packs = match(4, FOUR, fitted(4, null, "MOTOR")).lines().get(0);

        assertThat(packs.verdict()).isEqualTo(Verdict.AGREES);
        assertThat(packs.typeless()).isEqualTo(4);
    }

    @Test
    void a_motor_that_is_not_fitted_bars_and_a_part_that_nothing_reads_is_only_said() {
        Match without = match(4, FOUR, fitted(4, "PK-58"));
        Match unread = match(4, new Planned(List.of("PACK-1", "PACK-2", "PACK-3", "PACK-4")), fitted(4, "PK-58"));

        assertThat(text(without.against().get(0))).contains("1 of Drive unit (MOTOR) specified, and 0 fitted");
        assertThat(unread.lines().get(1).verdict()).isEqualTo(Verdict.NOT_READ);
        assertThat(unread.against()).isEmpty();
    }

    @Test
    void a_stage_that_reads_packs_answers_for_packs_alone() {
        Match wrong = match(5, FOUR, fitted(4, "PK-58"));

        assertThat(wrong.against(part -> part.startsWith("PACK-")))
                .extracting(Reason::key)
                .containsExactly("order.packsDiffer");
        assertThat(wrong.against("MOTOR"::equals)).extracting(Reason::key).containsExactly("order.partsDiffer");
        assertThat(wrong.against("INVERTER"::equals)).isEmpty();
    }

    @Test
    void a_number_that_the_route_does_not_fit_is_said_when_it_is_chosen() {
        assertThat(match(5, FOUR, List.of()).otherThanPlanned())
                .map(MatchTest::text)
                .hasValueSatisfying(
                        text -> assertThat(text).contains("5 packs are specified, and the route HOOK-26T fits 4"));
        assertThat(match(4, FOUR, List.of()).otherThanPlanned()).isEmpty();
    }

    @Test
    void without_a_specification_nothing_is_compared() {
        Match none = Match.of("WB-1", "HOOK-26T", Optional.empty(), List.of(), FOUR, fitted(4, "PK-58"));

        assertThat(none.lines()).isEmpty();
        assertThat(none.against()).isEmpty();
        assertThat(none.otherThanPlanned()).isEmpty();
    }

    private static String text(Reason reason) {
        return Words.of(reason.key(), reason.arguments().toArray());
    }

    private static Match match(int packs, Planned planned, List<FittedParts.Part> fitted) {
        return Match.of("WB-1", "HOOK-26T", Optional.of(chosen(packs)), List.of(drive()), planned, fitted);
    }

    private static List<FittedParts.Part> fitted(int packs, String type, String... others) {
        var parts = new ArrayList<FittedParts.Part>();
        IntStream.rangeClosed(1, packs)
                .forEach(i -> parts.add(new FittedParts.Part("PACK-" + i, "PK" + i, Optional.ofNullable(type))));
        for (String other : others) {
            parts.add(new FittedParts.Part(other, other + "-9", Optional.empty()));
        }
        return parts;
    }

    private static Chosen chosen(int packs) {
        return new Chosen(
                packs,
                "PK-58",
                1,
                new UUID(0, 1),
                new UUID(0, 2),
                List.of(),
                List.of(),
                new Chosen.Figures(
                        BigDecimal.ONE,
                        BigDecimal.ONE,
                        BigDecimal.ONE,
                        BigDecimal.ONE,
                        BigDecimal.ONE,
                        BigDecimal.ONE));
    }

    private static Component drive() {
        return new Component(
                "HOOK26-DRIVE",
                "hookloader-26t",
                "Drive unit",
                Component.Sort.IN,
                BigDecimal.valueOf(520),
                new BigDecimal("3.3"),
                Optional.empty(),
                BigDecimal.ONE,
                BigDecimal.ONE,
                Component.Origin.DATA_SHEET,
                "invented",
                Optional.empty(),
                Optional.empty(),
                Optional.of("MOTOR"));
    }
}
