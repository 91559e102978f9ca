package wainbook.handover.carbon.page;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.energy.Carbon;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.carbon.CarbonSaying.Used;
import wainbook.handover.carbon.CarbonSet;
import wainbook.handover.carbon.CarbonSets;
import wainbook.handover.carbon.CarbonWorking;
import wainbook.handover.carbon.CarbonWorking.Case;
import wainbook.ledger.Entry;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * A vehicle's carbon statement as its page shows it.
 *
 * @param stated the statement that stands, by its entry
 * @param engine what became of the engine, in words
 * @param states whether the reader may state it
 */
public record CarbonView(
        WorkOrder order, Optional<Entry> stated, String engine, boolean states, CarbonSets sets, Filled filled) {

    public String number() {
        return order.number();
    }

    public String path() {
        return "/orders/" + order.number() + "/carbon";
    }

    public String title() {
        return Words.of(
                "handover.carbonTitle",
                number(),
                Words.of(stated.isPresent() ? "handover.carbonStated" : "handover.carbonNotStated"));
    }

    public CarbonStated statement() {
        return (CarbonStated) stated.orElseThrow().saying();
    }

    public CarbonWorking working() {
        return new CarbonWorking(statement().basis(), statement().factors());
    }

    /** Least, likely, most. */
    public List<Line> lines() {
        CarbonWorking working = working();
        return Arrays.stream(Case.values())
                .map(one -> {
                    Carbon.Inputs in = working.inputs(one);
                    return new Line(
                            Words.of("handover.carbonCase." + one.name()),
                            figure(in.dieselLitrePer100Km()),
                            figure(in.kwhPerKm()),
                            figure(in.packKgPerKwhLow()),
                            tonnes(working.savedKg(one)),
                            link(in));
                })
                .toList();
    }

    /** @param link to its working, step by step */
    public record Line(String name, String litres, String kwh, String packs, String savedT, String link) {}

    private static String link(Carbon.Inputs in) {
        return "/calculations/carbon?annualKm=" + in.annualKm() + "&years=" + in.years() + "&dieselLitrePer100Km="
                + in.dieselLitrePer100Km() + "&kwhPerKm=" + in.kwhPerKm() + "&gridKgPerKwh=" + in.gridKgPerKwh()
                + "&dieselKgPerLitre=" + in.dieselKgPerLitre() + "&packKwh=" + in.packKwh() + "&packKgPerKwhLow="
                + in.packKgPerKwhLow() + "&packKgPerKwhHigh=" + in.packKgPerKwhHigh();
    }

    public List<Used> factors() {
        return statement().factors();
    }

    public Basis basis() {
        return statement().basis();
    }

    /** Years until the packs are repaid by the likely figures; empty where nothing is saved. */
    public Optional<String> repaidYears() {
        double yearly = working().yearlyKg();
        return yearly > 0 ? Optional.of(figure(working().packKg(Case.MID) / yearly)) : Optional.empty();
    }

    public List<CarbonSet> partial() {
        return sets.sets().stream().filter(set -> !set.whole()).toList();
    }

    public List<Option> years() {
        return sets.sets().stream()
                .map(set -> new Option(
                        String.valueOf(set.year()),
                        set.whole()
                                ? String.valueOf(set.year())
                                : Words.of("handover.carbonYearPartial", String.valueOf(set.year()))))
                .toList();
    }

    public String ranged(List<BigDecimal> range) {
        return Words.of(
                "handover.carbonRanged",
                range.get(1).toPlainString(),
                range.get(0).toPlainString(),
                range.get(2).toPlainString());
    }

    /** Whether any field of a range is wrong. */
    public boolean wrong(String name) {
        return ends(name).stream().anyMatch(end -> end.fault().isPresent());
    }

    /** The three fields of a range. */
    public List<End> ends(String name) {
        return Stream.of("Low", "Mid", "High")
                .map(end -> new End(
                        name + end,
                        Words.of("handover.carbonEnd" + end),
                        filled.value(name + end),
                        filled.form().fault(name + end)))
                .toList();
    }

    /** One field of a range. */
    public record End(String field, String word, String value, Optional<String> fault) {}

    public String year(int year) {
        return String.valueOf(year);
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    }

    private static String tonnes(double kg) {
        return String.format(Locale.ROOT, "%.1f", kg / 1000);
    }
}
