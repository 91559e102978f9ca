package wainbook.handover.issue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.handover.issue.Figures.StageItem;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.words.SayingInWords;

/** What was weighed, measured and tightened, as it stands: one row a reading, by passing entries only. */
final class Readings {

    private static final String KILOGRAM = "kg";
    private static final String RECEIVED = "received";

    private Readings() {}

    /** The axles as the donor came in. */
    static List<Map<String, Object>> received(List<StageItem> items) {
        var rows = new ArrayList<Map<String, Object>>();
        items.stream().filter(item -> item.item().key().equals(RECEIVED)).forEach(item -> {
            if (item.item().item().asks() instanceof Ask.Table table
                    && item.passing().map(Entry::saying).orElse(null) instanceof Tabled said
                    && table.columns().size() == 1) {
                for (int row = 0;
                        row < Math.min(table.rows().size(), said.cells().size());
                        row++) {
                    rows.add(Map.of(
                            "what", table.rows().get(row),
                            "kg", said.cells().get(row).toPlainString()));
                }
            }
        });
        return rows;
    }

    /** The axles as built. */
    static List<Map<String, Object>> weights(List<StageItem> items, Formats format) {
        return weighed(items)
                .map(item -> {
                    Measured said = (Measured) item.passing().orElseThrow().saying();
                    return row(item, format, said.reading().toPlainString() + " " + KILOGRAM, legal(said));
                })
                .toList();
    }

    /** Empty where nothing was weighed. */
    static String totalKg(List<StageItem> items) {
        return weighed(items)
                .map(item -> ((Measured) item.passing().orElseThrow().saying()).reading())
                .reduce(BigDecimal::add)
                .map(BigDecimal::toPlainString)
                .orElse("");
    }

    private static Stream<StageItem> weighed(List<StageItem> items) {
        return items.stream()
                .filter(StageItem::built)
                .filter(item -> item.passing().map(Entry::saying).orElse(null) instanceof Measured said
                        && said.unit().equals(KILOGRAM));
    }

    /** What was determined about the high-voltage system, with its verdict. */
    static List<Map<String, Object>> highVoltage(List<StageItem> items, Formats format) {
        return items.stream()
                .filter(item -> item.passing()
                        .map(Entry::saying)
                        .filter(Readings::electrical)
                        .isPresent())
                .map(item -> row(
                        item,
                        format,
                        SayingInWords.of(item.passing().orElseThrow().saying()),
                        ""))
                .toList();
    }

    private static boolean electrical(Saying saying) {
        return saying instanceof Determined
                || (saying instanceof Measured said && said.unit().endsWith("Ω"));
    }

    /** Joints of class A with what they were tightened to. */
    static List<Map<String, Object>> joints(List<StageItem> items, Releases releases) {
        return items.stream()
                .flatMap(item -> item.passing().stream())
                .map(Entry::saying)
                .filter(Tightened.class::isInstance)
                .map(Tightened.class::cast)
                .filter(said -> said.jointClass() == JointClass.A)
                .map(said -> Map.<String, Object>of(
                        "code", said.joint(),
                        "title",
                                releases.joint(said.joint())
                                        .map(joint -> joint.title())
                                        .orElse(said.joint()),
                        "bolts", said.boltsNm().size(),
                        "torque", said.torque().targetNm().toPlainString() + " N·m"))
                .toList();
    }

    private static Map<String, Object> row(StageItem item, Formats format, String value, String limit) {
        Entry entry = item.passing().orElseThrow();
        Optional<Used> used =
                entry.saying() instanceof Result result ? result.basis().used() : Optional.empty();
        return Map.of(
                "what", item.item().item().title(),
                "stage", item.stage(),
                "value", value,
                "limit", limit,
                "instrument", used.map(Used::instrument).orElse(""),
                "due", used.map(Used::due).map(Formats::date).orElse(""),
                "by", entry.moment().who(),
                "at", format.moment(entry.moment().at()));
    }

    private static String legal(Measured said) {
        return said.legal()
                .flatMap(Limits::upper)
                .map(upper -> Words.of("handover.atMost", upper.toPlainString(), said.unit()))
                .orElse("");
    }
}
