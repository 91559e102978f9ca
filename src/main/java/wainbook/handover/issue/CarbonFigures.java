package wainbook.handover.issue;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.carbon.CarbonSaying.Used;
import wainbook.handover.carbon.CarbonWorking;
import wainbook.handover.carbon.CarbonWorking.Case;

/** What the carbon statement that stands says. */
final class CarbonFigures {

    private CarbonFigures() {}

    private static final List<String> NAMES = List.of(
            "year",
            "set",
            "annualKm",
            "years",
            "litres",
            "kwh",
            "charging",
            "packKwh",
            "packFactor",
            "fall",
            "low",
            "mid",
            "high",
            "yearly",
            "packs",
            "diesel",
            "grid",
            "fromGrid",
            "engine");

    /** Every figure is empty where nothing was stated, so that the text can be read before. */
    static Map<String, Object> of(Optional<CarbonStated> stated, String engine) {
        return stated.map(said -> figures(said, engine)).orElseGet(() -> {
            Map<String, Object> empty = new HashMap<>(Map.of("factors", List.of()));
            NAMES.forEach(name -> empty.put(name, ""));
            return empty;
        });
    }

    private static Map<String, Object> figures(CarbonStated said, String engine) {
        Basis basis = said.basis();
        var working = new CarbonWorking(basis, said.factors());
        return Map.ofEntries(
                Map.entry("year", String.valueOf(said.year())),
                Map.entry("set", said.set()),
                Map.entry("annualKm", String.valueOf(basis.annualKm())),
                Map.entry("years", String.valueOf(basis.years())),
                Map.entry("litres", range(basis.litresPer100Km())),
                Map.entry("kwh", range(basis.kwhPerKm())),
                Map.entry("charging", range(basis.chargingPercent())),
                Map.entry("packKwh", basis.packKwh().toPlainString()),
                Map.entry("packFactor", range(basis.packKgPerKwh())),
                Map.entry("fall", basis.gridFallPercent().toPlainString()),
                Map.entry("low", said.saved().lowT().toPlainString()),
                Map.entry("mid", said.saved().midT().toPlainString()),
                Map.entry("high", said.saved().highT().toPlainString()),
                Map.entry("yearly", said.saved().yearlyT().toPlainString()),
                Map.entry(
                        "packs",
                        range(List.of(
                                said.saved().packLowT(),
                                said.saved().packMidT(),
                                said.saved().packHighT()))),
                Map.entry("diesel", plain(working.dieselKgPerLitre())),
                Map.entry("grid", plain(working.gridKgPerKwh())),
                Map.entry("fromGrid", plain(working.fromTheGrid(Case.MID))),
                Map.entry(
                        "factors",
                        said.factors().stream().map(CarbonFigures::factor).toList()),
                Map.entry("engine", engine));
    }

    private static Map<String, Object> factor(Used used) {
        return Map.of(
                "what", used.factor().word(),
                "value", used.value().toPlainString() + " " + used.unit(),
                "year", String.valueOf(used.year()),
                "source", used.source(),
                "standing", used.standing().word());
    }

    private static String range(List<BigDecimal> range) {
        return range.get(1).toPlainString() + " (" + range.get(0).toPlainString() + " to "
                + range.get(2).toPlainString() + ")";
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(5, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
