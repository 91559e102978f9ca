package wainbook.waste.rate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.Said;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.ContainerOpened;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.ReturnNoted;

/** The two rates of one vehicle's things. */
class RatesTest {

    private static final Instant NINE = Instant.parse("2026-03-10T09:00:00Z");

    @Test
    void what_is_drained_counts_whole_in_the_form_of_iso_22628_and_not_at_all_by_notes_before_a_return() {
        var rates = new Rates(List.of(thing("oil", "13 02 05*", "20", Fate.RECYCLE)), Map.of());
        assertThat(rates.byIso().preTreatmentKg()).isEqualByComparingTo("20");
        assertThat(rates.byNotes().metalsKg()).isEqualByComparingTo("0");
        assertThat(rates.unknownKg()).isEqualByComparingTo("20");
    }

    @Test
    void what_is_to_be_disposed_of_counts_only_where_the_form_counts_all_that_is_drained() {
        var rates = new Rates(
                List.of(
                        thing("coolant", "16 01 14*", "38", Fate.DISPOSE),
                        thing("rags", "15 02 02*", "4", Fate.DISPOSE)),
                Map.of());
        assertThat(rates.byIso().preTreatmentKg()).isEqualByComparingTo("38");
        assertThat(rates.byIso().restKg()).isEqualByComparingTo("0");
        assertThat(rates.byIso().massKg()).isEqualByComparingTo("42");
    }

    @Test
    void a_part_that_stays_in_use_counts_in_both() {
        var rates = new Rates(List.of(thing("pump", "16 01 22", "9", Fate.CORE)), Map.of());
        assertThat(rates.byIso().dismantledKg()).isEqualByComparingTo("9");
        assertThat(rates.byNotes().dismantledKg()).isEqualByComparingTo("9");
        assertThat(rates.unknownKg()).isEqualByComparingTo("0");
    }

    @Test
    void a_return_parts_each_thing_as_it_parts_its_container() {
        Thing engine = thing("engine", "16 01 22", "880", Fate.RECYCLE);
        var rates = new Rates(List.of(engine), Map.of("SKIP", skip("880", "120", "850", "50", "100")));
        assertThat(rates.byNotes().metalsKg()).isEqualByComparingTo("748");
        assertThat(rates.byNotes().energyKg()).isEqualByComparingTo("44");
        assertThat(rates.byIso().metalsKg()).isEqualByComparingTo("748");
        assertThat(rates.unknownKg()).isEqualByComparingTo("0");
        assertThat(rates.byNotes().path())
                .isEqualTo("/calculations/recovery-rate?vehicleKg=880&reuseKg=0&recycleKg=748&energyKg=44");
    }

    @Test
    void no_rate_counts_more_than_there_was() {
        Thing engine = thing("engine", "16 01 22", "0.001", Fate.RECYCLE);
        Thing battery = thing("battery", "16 06 01*", "110", Fate.RECYCLE);
        var rates = new Rates(List.of(engine, battery), Map.of("SKIP", skip("0.001", "2.999", "1", "1", "1")));
        for (Recovery one : List.of(rates.byIso(), rates.byNotes())) {
            assertThat(one.preTreatmentKg()
                            .add(one.dismantledKg())
                            .add(one.metalsKg())
                            .add(one.restKg())
                            .add(one.energyKg()))
                    .isLessThanOrEqualTo(one.massKg());
        }
    }

    private static Thing thing(String key, String code, String kg, Fate fate) {
        Subject order = Subject.workOrder("V1");
        History history = say(History.empty(order), new Placed(key, key, "SKIP", code, new BigDecimal(kg)));
        return new Thing(
                key,
                key,
                ListOfWaste.ours().find(code).orElseThrow(),
                new BigDecimal(kg),
                Optional.empty(),
                Optional.empty(),
                fate,
                NINE,
                Said.of(history).of(key));
    }

    private static Container skip(String own, String others, String recycled, String energy, String disposed) {
        History history = History.empty(Labels.subject("SKIP"));
        history = say(
                history,
                new ContainerOpened(
                        "16 01 22", new BigDecimal("3000"), Measure.KG, "Yard", true, true, Optional.empty(), 90));
        history = say(history, new PutIn("V1", "engine", "engine", new BigDecimal(own), Optional.empty()));
        history = say(history, new PutIn("V2", "engine", "engine", new BigDecimal(others), Optional.empty()));
        history = say(
                history,
                new ReturnNoted(
                        LocalDate.of(2026, 3, 12),
                        "R-1",
                        new BigDecimal(recycled),
                        new BigDecimal(energy),
                        new BigDecimal(disposed)));
        return Container.of(history).orElseThrow();
    }

    private static History say(History history, Saying saying) {
        return history.and(new Entry(
                new UUID(3, history.number()),
                history.subject(),
                history.number() + 1,
                Moment.of("7001", NINE),
                "0".repeat(64),
                saying));
    }
}
