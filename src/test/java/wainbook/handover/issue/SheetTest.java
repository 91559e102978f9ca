package wainbook.handover.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.handover.carbon.CarbonStatements;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.page.Formats;
import wainbook.print.Validated;
import wainbook.process.VehicleFacts;
import wainbook.station.StationSaying.Held;
import wainbook.works.Person;

/** Every document as the program brings it, on paper (ISO 19005-3 level A, ISO 14289-1, by an independent validator). */
class SheetTest {

    private static final Instant AT = Instant.parse("2026-03-10T09:00:00Z");

    static Stream<Template> brought() {
        return Templates.after(new History(Subject.works(), List.of())).stream();
    }

    @ParameterizedTest
    @MethodSource("brought")
    void every_document_prints_and_shows_what_is_on_record(Template template) {
        byte[] pdf = sheet(template).pdf();
        Validated.passes(pdf);
        assertThat(Validated.text(pdf))
                .contains(template.title(), "WB-0001/" + template.code() + "/1", "Signed by W-1013")
                .doesNotContain("{", "\uFFFD", "#for");
        assertThat(sheet(template).pdf()).as("equal bytes").isEqualTo(pdf);
    }

    @Test
    void signs_of_the_trade_come_out_as_they_are() {
        Template template = brought().findFirst().orElseThrow().changed(2, "{works}\n");
        Map<String, Object> figures = figures();
        figures.put("works", "≥ 500 Ω/V · ≤ 0.1 Ω · 12.5 N·m ± 2 % · 40 °C → µ ✓");
        assertThat(Validated.text(sheet(template, figures).pdf()))
                .contains("≥ 500 Ω/V · ≤ 0.1 Ω · 12.5 N·m ± 2 % · 40 °C → µ ✓");
    }

    @ParameterizedTest
    @MethodSource("brought")
    void it_is_not_issued_without_the_figures_it_needs(Template template) {
        for (String need : template.needs()) {
            Map<String, Object> figures = figures();
            figures.put(need, List.of());
            assertThat(rules(template, figures).missing())
                    .extracting(reason -> reason.key().toLowerCase(java.util.Locale.ROOT))
                    .containsExactly("handover.needs" + need);
        }
        assertThat(rules(template, figures()).missing()).isEmpty();
    }

    private static Sheet sheet(Template template) {
        return sheet(template, figures());
    }

    private static Sheet sheet(Template template, Map<String, Object> figures) {
        IssueRules rules = rules(template, figures);
        String html = Filling.html(template.text(), figures).fold(text -> text, reasons -> {
            throw new AssertionError(reasons);
        });
        return new Sheet(
                rules,
                1,
                html,
                "W-1013",
                new Held(IssueRules.COMPETENCE, 0, LocalDate.of(2027, 3, 1)),
                AT,
                new Formats(ZoneId.of("Europe/London")));
    }

    private static IssueRules rules(Template template, Map<String, Object> figures) {
        Person nobody = Person.of(new History(Subject.person("W-1013"), List.of()));
        return new IssueRules("WB-0001", template, figures, nobody, LocalDate.of(2026, 3, 10));
    }

    private static Map<String, Object> figures() {
        Map<String, Object> facts = new HashMap<>();
        VehicleFacts.VOCABULARY.names().forEach(name -> facts.put(name, "yes"));
        Map<String, Object> figures = new HashMap<>();
        figures.put("works", "Alder Quay Conversion Works");
        figures.put("day", "10 Mar 2026");
        figures.put(
                "order",
                Map.of(
                        "number", "WB-0001",
                        "operator", "Vale and Fen <Community> Buses",
                        "kind", "City bus, 12 m",
                        "vin", "WBKZZZ1234567890X",
                        "registration", "VF12 ABC",
                        "odometerKm", "612000"));
        figures.put("facts", facts);
        figures.put("received", List.of(Map.of("what", "front axle", "kg", "3900")));
        figures.put("weights", List.of(reading("Weigh the front axle as built", "4837.5 kg")));
        figures.put("total", "12800");
        figures.put("measurements", List.of(reading("Insulation resistance", "≥ 1.2 MΩ, passes")));
        figures.put("packs", List.of(Map.of("part", "PACK-1", "number", "PK70000006")));
        figures.put("parts", List.of(Map.of("part", "PDU", "number", "PD-17")));
        figures.put("software", List.of(Map.of("module", "VCU", "version", "4.2.1")));
        figures.put("joints", List.of(Map.of("code", "HV-LUG", "title", "Cable lugs", "bolts", 6, "torque", "20 N·m")));
        figures.put(
                "gates",
                List.of(Map.of("stage", "Electrical commissioning", "by", "W-1008", "at", "9 Mar 2026 14:02")));
        figures.put("drives", List.of());
        figures.put("record", "complete");
        figures.put("handover", handover());
        figures.put("carbon", carbon());
        figures.put("checks", List.of(Map.of("joint", "WHEEL-REAR-L", "byKm", 80)));
        figures.put(
                "isolation",
                Map.of(
                        "sources",
                        List.of(Map.of(
                                "name", "Pack 1",
                                "how", "open the service disconnect",
                                "lock", "hasp at the pack",
                                "shown", "lever down")),
                        "points",
                        List.of("junction box behind the cab"),
                        "waitMinutes",
                        "10",
                        "maximum",
                        "756 V"));
        return figures;
    }

    private static Map<String, Object> reading(String what, String value) {
        return Map.of(
                "what", what,
                "stage", "Final inspection",
                "value", value,
                "limit", "at most 9000 kg",
                "instrument", "WP-01",
                "due", "1 Sep 2026",
                "by", "W-1001",
                "at", "10 Mar 2026 08:12");
    }

    private static Map<String, Object> handover() {
        return Map.ofEntries(
                Map.entry("odometerKm", "612060"),
                Map.entry("chargePercent", "84"),
                Map.entry("bay", "Bay 1"),
                Map.entry("readAt", "10 Mar 2026 08:40"),
                Map.entry(
                        "pictures",
                        List.of(Map.of("number", 1, "place", "Nearside", "remark", "Scratch", "sha256", "0f3a"))),
                Map.entry(
                        "snags",
                        List.of(Map.of(
                                "number", 1,
                                "defect", "Scratch",
                                "place", "Nearside",
                                "with", "O-1",
                                "remedy", "Touch up",
                                "owner", "W-1007",
                                "due", "10 Apr 2026",
                                "stands", "open"))),
                Map.entry("things", List.of(Map.of("what", "Vehicle keys", "count", 2))),
                Map.entry(
                        "instructions",
                        List.of(Map.of(
                                "on", "10 Mar 2026",
                                "by", "W-1007",
                                "drivers", "O-2, O-3",
                                "workshop", "O-4",
                                "topics", "Charging, Towing"))),
                Map.entry("notInstructed", ""),
                Map.entry("warrantyFrom", "10 Mar 2026"),
                Map.entry("warrantyKm", "612060"),
                Map.entry("warrantyCovers", "Conversion, 24 months."),
                Map.entry("receipt", "Receipt 1, O-5, Depot foreman, 10 Mar 2026 09:00."));
    }

    /** By the factors that the program carries. */
    private static Map<String, Object> carbon() {
        return CarbonFigures.of(Optional.of(CarbonStatements.ofATruck(2025)), "The engine was made unusable.");
    }
}
