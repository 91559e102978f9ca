package wainbook.waste.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.ledger.Subject;
import wainbook.process.stream.Fate;
import wainbook.waste.Labels;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.ContainerSealed;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.LeftAsPart;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.WasteSaying.PlacingVoided;
import wainbook.waste.WasteSaying.PutInVoided;

/** What may go into a container, and what may not. */
class PutInRuleTest {

    private final Filling works = new Filling();

    @BeforeEach
    void containers() {
        works.open("OIL", "13 02 05*", "100", Measure.L);
        works.open("FILTERS", "16 01 07*", "20", Measure.KG);
        works.open("STEEL", "16 01 17", "1000", Measure.KG);
    }

    @Test
    void oil_goes_into_the_oil_and_is_said_of_both() {
        assertThat(put("OIL", oil("28"))).isEmpty();
        assertThat(works.container("OIL").massKg()).isEqualByComparingTo("24.36");
        assertThat(works.container("OIL").filled()).isEqualByComparingTo("28");
        assertThat(oil("28").container()).contains("OIL");
        assertThat(oil("28").standing()).isEqualTo(Thing.Standing.IN_CONTAINER);
    }

    @Test
    void another_entry_of_the_list_is_refused_and_hazardous_is_never_mixed_with_other_waste() {
        Thing filters = works.thing("V1", "n1", "16 01 07*", "6", Optional.empty());
        assertThat(put("STEEL", filters)).containsExactly("waste.hazardMixed");
        works.open("BATTERIES", "16 06 01*", "600", Measure.KG);
        assertThat(put("BATTERIES", filters)).containsExactly("waste.codeDiffers");
        Thing tank = works.thing("V1", "n2", "16 01 17", "45", Optional.empty());
        assertThat(put("FILTERS", tank)).contains("waste.hazardMixed");
        assertThat(works.container("STEEL").inside()).isEmpty();
    }

    @Test
    void what_fits_to_the_last_litre_goes_in_and_a_drop_more_does_not() {
        assertThat(put("OIL", oil("72"))).isEmpty();
        assertThat(put(
                        "OIL",
                        "V2",
                        works.thing("V2", "strip.oil", "13 02 05*", "24.37", Optional.of(new BigDecimal("28.01")))))
                .containsExactly("waste.full");
        assertThat(put(
                        "OIL",
                        "V2",
                        works.thing("V2", "strip.oil", "13 02 05*", "24.36", Optional.of(new BigDecimal("28")))))
                .isEmpty();
        assertThat(works.container("OIL").filled()).isEqualByComparingTo("100");
    }

    @Test
    void what_was_weighed_has_no_litres() {
        assertThat(put("OIL", works.thing("V1", "n1", "13 02 05*", "6", Optional.empty())))
                .containsExactly("waste.noLitres");
    }

    @Test
    void nothing_goes_in_twice_nor_after_the_seal() {
        put("OIL", oil("28"));
        works.open("OIL-2", "13 02 05*", "100", Measure.L);
        assertThat(put("OIL-2", oil("28"))).containsExactly("waste.placedAlready");
        works.say(Labels.subject("OIL-2"), new ContainerSealed(BigDecimal.ZERO));
        assertThat(put("OIL-2", "V2", works.thing("V2", "n1", "13 02 05*", "1", Optional.of(BigDecimal.ONE))))
                .containsExactly("waste.containerClosed");
    }

    @Test
    void a_slip_of_the_pen_is_taken_back_in_both_streams_and_may_go_in_anew() {
        put("OIL", oil("28"));
        works.say(Labels.subject("OIL"), new PutInVoided("V1", "strip.oil", "wrong drum"));
        works.say(Subject.workOrder("V1"), new PlacingVoided("strip.oil", "OIL", "wrong drum"));
        assertThat(works.container("OIL").massKg()).isEqualByComparingTo("0");
        assertThat(oil("28").container()).isEmpty();
        assertThat(put("OIL", oil("28"))).isEmpty();
    }

    @Test
    void what_is_kept_sold_or_gone_is_no_waste() {
        works.say(
                Subject.workOrder("V1"),
                new Decided("n3", Fate.SOLD, Optional.of("DL-1"), Optional.empty(), Optional.empty(), ""));
        Thing gearbox = works.thing("V1", "n3", "16 01 17", "290", Optional.empty());
        assertThat(put("STEEL", gearbox)).containsExactly("waste.notWaste");
        works.say(Subject.workOrder("V1"), new LeftAsPart("n3", "DL-1", ""));
        assertThat(put("STEEL", works.thing("V1", "n3", "16 01 17", "290", Optional.empty())))
                .containsExactly("waste.leftAlready");
    }

    @Test
    void what_is_not_there_is_said_to_be_not_there() {
        assertThat(PutInRule.against(Optional.empty(), "X", Optional.empty(), "strip.oil").stream()
                        .map(Reason::key))
                .containsExactly("waste.noContainer", "waste.noThing");
    }

    private Thing oil(String litres) {
        BigDecimal volume = new BigDecimal(litres);
        return works.thing(
                "V1",
                "strip.oil",
                "13 02 05*",
                volume.multiply(new BigDecimal("0.87")).toPlainString(),
                Optional.of(volume));
    }

    private List<String> put(String label, Thing thing) {
        return put(label, "V1", thing);
    }

    private List<String> put(String label, String order, Thing thing) {
        return works.put(label, order, thing).stream().map(Reason::key).toList();
    }
}
