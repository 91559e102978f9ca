package wainbook.waste;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.FromWaste;
import wainbook.handover.HandoverSaying.State;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OwnSheet;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Rebuild;
import wainbook.ledger.Subject;
import wainbook.process.sheet.Ask;
import wainbook.process.stream.Density;
import wainbook.process.stream.Fate;
import wainbook.process.stream.MaterialStream;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.act.Deciding;
import wainbook.waste.act.Opening;
import wainbook.waste.act.PuttingIn;
import wainbook.works.shift.WorksDay;

/** What is taken out of a vehicle, from the item that dips it to the note under which it leaves. */
@QuarkusTest
@Tag("database")
class WasteTest {

    private static final String OIL = "13 02 05*";

    @Inject
    Opening opening;

    @Inject
    PuttingIn puttingIn;

    @Inject
    Deciding deciding;

    @Inject
    TakenOut takenOut;

    @Inject
    FromWaste fromWaste;

    @Inject
    Ledger ledger;

    @Inject
    Rebuild rebuild;

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    private OwnSheet sheet;

    @BeforeEach
    void people_and_a_sheet_that_dips_and_weighs() {
        Cast.assemble();
        sheet = OwnSheet.released(
                OwnSheet.item("oil", "Drain the oil", quantity("l", "engine oil", OIL, Optional.empty(), "0.87"), 5),
                OwnSheet.item(
                        "fuel",
                        "Drain the fuel",
                        quantity("l", "diesel", "13 07 01*", Optional.of(Fate.REUSE), "0.84"),
                        5),
                OwnSheet.item(
                        "tank", "Take the tank out", quantity("kg", "tank", "16 01 17", Optional.empty(), ""), 5));
    }

    private static Ask quantity(String unit, String name, String code, Optional<Fate> fate, String kgPerL) {
        return new Ask.Quantity(
                unit,
                Optional.empty(),
                Optional.of(new MaterialStream(
                        Optional.of(name),
                        code,
                        fate,
                        Optional.of(kgPerL)
                                .filter(text -> !text.isEmpty())
                                .map(text -> new Density(new BigDecimal(text), "common practice, no source")))));
    }

    @Test
    void what_an_item_dips_has_a_mass_and_waits_for_its_container() {
        Donor bus = stripped();
        assertThat(thing(bus, "intake.oil").massKg()).isEqualByComparingTo("24.36");
        assertThat(thing(bus, "intake.oil").standing()).isEqualTo(Thing.Standing.UNPLACED);
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/orders/" + bus.number() + "/strip"))
                .contains(
                        "3 things not placed", "engine oil", "28 l × 0.87 kg/l", "in quarantine until it is accepted");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/station/" + bus.number()))
                .contains("/orders/" + bus.number() + "/strip#now");
    }

    @Test
    void one_touch_puts_it_in_and_a_second_one_writes_nothing() {
        Donor bus = stripped();
        String drum = opened(OIL, "200", Measure.L);
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        String strip = "/orders/" + bus.number() + "/strip";
        assertThat(technician.page(strip)).contains("Put it in " + drum);
        Map<String, Object> form = technician.form(strip);
        form.put("container", drum);
        form.put("id", UUID.randomUUID().toString());
        assertThat(technician.send(strip + "/intake.oil/placing", form).statusCode())
                .isEqualTo(303);
        assertThat(technician.send(strip + "/intake.oil/placing", form).statusCode())
                .isEqualTo(303);
        assertThat(ledger.history(Labels.subject(drum)).entries()).hasSize(2);
        assertThat(technician.page("/waste/containers/" + drum)).contains("In it, from 1 vehicle", "24.36", "14 %");
        form.put("id", UUID.randomUUID().toString());
        Response again = technician.send(strip + "/intake.oil/placing", form);
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.asString()).contains("lies in container " + drum + " already");
    }

    @Test
    void a_container_of_another_entry_takes_nothing() {
        Donor bus = stripped();
        String steel = opened("16 01 17", "500", Measure.KG);
        assertThat(keys(put(bus, "intake.oil", steel))).containsExactly("waste.hazardMixed");
        assertThat(keys(put(bus, "intake.fuel", opened("13 07 01*", "500", Measure.L))))
                .containsExactly("waste.notWaste");
        assertThat(put(bus, "intake.tank", steel).reasons()).isEmpty();
    }

    @Test
    void a_mirror_entry_asks_who_assessed_it_and_on_what_and_an_unknown_one_opens_nothing() {
        assertThat(keys(open(label(), "16 01 14*", "200", Measure.L)))
                .containsExactly("waste.assessorMissing", "waste.basisMissing");
        assertThat(keys(open(label(), "16 01 05", "200", Measure.KG))).containsExactly("waste.codeUnknown");
        String label = opened("160107", "60", Measure.KG);
        assertThat(keys(open(label, "160107", "60", Measure.KG))).containsExactly("waste.labelTaken");
        assertThat(container(label).row().code()).isEqualTo("16 01 07*");
    }

    @Test
    void a_container_leaves_by_a_note_whose_code_no_other_has_and_the_document_can_be_noted_from_it() {
        Donor bus = stripped();
        String drum = opened(OIL, "200", Measure.L);
        assertThat(fromWaste.of(history(bus), "GB-34").orElseThrow().sentence())
                .contains("1 thing is not in a container");
        put(bus, "intake.oil", drum);
        var standing = fromWaste.of(history(bus), "GB-34").orElseThrow();
        assertThat(standing.state()).isEqualTo(State.APPLIED_FOR);
        assertThat(standing.sentence()).isEqualTo("In " + drum + "; the note follows");
        String code = "TESTWA/" + UUID.randomUUID().toString().substring(0, 5).toUpperCase(java.util.Locale.ROOT);
        assertThat(collect(drum, code, LocalDate.of(2026, 1, 1)).jsonPath().getList("reasons.key"))
                .containsExactly("waste.seenNotToday");
        collect(drum, code, today()).then().statusCode(201);
        var noted = fromWaste.of(history(bus), "GB-34").orElseThrow();
        assertThat(noted.state()).isEqualTo(State.IN_HAND);
        assertThat(noted.reference()).isEqualTo(code);
        assertThat(fromWaste.of(history(bus), "EU-13")).contains(noted);
        var german = fromWaste.of(history(bus), "DE-20").orElseThrow();
        assertThat(german.state()).isEqualTo(State.APPLIED_FOR);
        assertThat(german.sentence()).startsWith("Under " + code).contains("qualified signature is made outside");
        assertThat(fromWaste.sentences(history(bus))).containsKeys("GB-34", "EU-13", "DE-20");
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/waste/containers/" + drum + "/note"))
                .contains(code, "Consignment note", "24.5 kg", "the works counted 24.36 kg", "Keep it until");
        Donor other = stripped();
        String second = opened(OIL, "200", Measure.L);
        put(other, "intake.oil", second);
        assertThat(collect(second, code, today()).jsonPath().getList("reasons.key"))
                .containsExactly("waste.noteCodeTaken");
        assertThat(container(second).collected()).isEmpty();
    }

    @Test
    void a_core_that_did_not_go_back_in_time_is_an_open_matter_until_it_has() {
        Donor bus = stripped();
        deciding.note(
                new Deciding.ToNote(UUID.randomUUID(), bus.number(), "old pump", "16 01 22", BigDecimal.TEN, Fate.CORE),
                Cast.TECHNICIAN.at(clock.instant()));
        assertThat(keys(decide(bus, "n1", Fate.CORE, Optional.empty(), Optional.empty())))
                .containsExactly("waste.partyMissing", "waste.dueMissing");
        decide(bus, "n1", Fate.CORE, Optional.of("SP-1"), Optional.of(today().minusDays(1)));
        Browsing leader = Browsing.as(Cast.TEAM_LEADER);
        assertThat(leader.page("/matters?search=" + bus.number())).contains("Core to return", "old pump for SP-1");
        Map<String, Object> form = leader.form("/orders/" + bus.number() + "/strip/n1");
        form.put("to", "SP-1");
        form.put("reference", "D-7");
        assertThat(leader.send("/orders/" + bus.number() + "/strip/n1/given", form)
                        .statusCode())
                .isEqualTo(303);
        assertThat(leader.page("/matters?search=" + bus.number())).doesNotContain("old pump");
        assertThat(thing(bus, "n1").standing()).isEqualTo(Thing.Standing.GONE);
    }

    @Test
    void a_part_kept_for_reuse_is_in_quarantine_until_it_is_tested() {
        Donor bus = stripped();
        decide(bus, "intake.fuel", Fate.REUSE, Optional.empty(), Optional.empty());
        assertThat(thing(bus, "intake.fuel").standing()).isEqualTo(Thing.Standing.UNPLACED);
        deciding.decide(
                new Deciding.ToDecide(
                        UUID.randomUUID(),
                        bus.number(),
                        "intake.fuel",
                        Fate.REUSE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("tank 1"),
                        ""),
                Cast.TECHNICIAN.at(clock.instant()));
        assertThat(thing(bus, "intake.fuel").standing()).isEqualTo(Thing.Standing.QUARANTINE);
        deciding.test(
                new Deciding.ToTest(UUID.randomUUID(), bus.number(), "intake.fuel", false, "water in it"),
                Cast.TECHNICIAN.at(clock.instant()));
        assertThat(thing(bus, "intake.fuel").standing()).isEqualTo(Thing.Standing.UNFIT);
    }

    @Test
    void the_tables_are_made_again_as_they_were() {
        Donor bus = stripped();
        String drum = opened(OIL, "200", Measure.L);
        put(bus, "intake.oil", drum);
        List<String> before = rows();
        assertThat(before).anyMatch(row -> row.contains(drum) && row.contains("24.36"));
        rebuild.everything();
        assertThat(rows()).isEqualTo(before);
    }

    private static List<String> rows() {
        return QuarkusTransaction.requiringNew()
                .call(() -> ContainerRow.all().stream()
                        .map(row -> row.label + " " + row.code + " "
                                + row.massKg.stripTrailingZeros().toPlainString() + " " + row.vehicles + " "
                                + row.isSealed + " " + row.noteCode)
                        .toList());
    }

    private Donor stripped() {
        Donor bus = Donor.received(sheet.route());
        bus.record(Cast.TECHNICIAN, "oil", Map.of("quantity", "28")).then().statusCode(201);
        bus.record(Cast.TECHNICIAN, "fuel", Map.of("quantity", "60")).then().statusCode(201);
        bus.record(Cast.TECHNICIAN, "tank", Map.of("quantity", "45")).then().statusCode(201);
        return bus;
    }

    private Response collect(String label, String code, LocalDate seen) {
        var body = new HashMap<String, Object>(Map.of(
                "id",
                Donor.id(),
                "code",
                code,
                "producer",
                "The works, Line Road 1",
                "sic",
                "29.20",
                "process",
                "Dismantling",
                "components",
                "mineral oil",
                "hazards",
                "HP 14",
                "packing",
                "1 drum",
                "carrier",
                "A carrier",
                "registration",
                "R-1"));
        body.putAll(Map.of(
                "registrationSeenOn",
                seen.toString(),
                "vehicle",
                "ZZ1",
                "site",
                "A site",
                "permit",
                "P-1",
                "permitSeenOn",
                today().toString(),
                "weighbridgeKg",
                "24.5",
                "weighbridge",
                "W-1"));
        return Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/json")
                .body(body)
                .post("/api/v1/waste/containers/" + label + "/collection");
    }

    private LocalDate today() {
        return day.of(clock.instant());
    }

    private Outcome<Entry> decide(Donor bus, String thing, Fate fate, Optional<String> party, Optional<LocalDate> due) {
        return deciding.decide(
                new Deciding.ToDecide(UUID.randomUUID(), bus.number(), thing, fate, party, due, Optional.empty(), ""),
                Cast.TECHNICIAN.at(clock.instant()));
    }

    private Outcome<Entry> put(Donor bus, String thing, String label) {
        return puttingIn.put(
                new PuttingIn.ToPut(UUID.randomUUID(), label, bus.number(), thing),
                Cast.TECHNICIAN.at(clock.instant()));
    }

    private String opened(String code, String capacity, Measure measure) {
        String label = label();
        assertThat(open(label, code, capacity, measure).reasons()).isEmpty();
        return label;
    }

    private Outcome<Entry> open(String label, String code, String capacity, Measure measure) {
        return opening.open(
                new Opening.ToOpen(
                        UUID.randomUUID(),
                        label,
                        code,
                        new BigDecimal(capacity),
                        measure,
                        "Yard",
                        true,
                        true,
                        Optional.empty(),
                        30),
                Cast.TECHNICIAN.at(clock.instant()));
    }

    private static String label() {
        return "T-" + UUID.randomUUID().toString().substring(0, 8);
    }

    private Container container(String label) {
        return Container.of(ledger.history(Labels.subject(label))).orElseThrow();
    }

    private History history(Donor bus) {
        return ledger.history(Subject.workOrder(bus.number()));
    }

    private Thing thing(Donor bus, String key) {
        return takenOut.of(history(bus), key).orElseThrow();
    }

    private static List<String> keys(Outcome<Entry> outcome) {
        return outcome.reasons().stream().map(Reason::key).toList();
    }
}
