package wainbook.quality.chart;

import java.util.LinkedHashMap;
import java.util.Map;
import wainbook.page.Words;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;

/** What charts are called. */
public record Titles(Map<String, String> byKey) {

    public Titles {
        byKey = Map.copyOf(byKey);
    }

    /** The titles of an item's charts: one, or one a column. */
    static Map<String, String> of(String stage, CheckItem item) {
        String key = Charted.Sort.ITEM.word() + "/" + stage + ":" + item.key();
        Map<String, String> titles = new LinkedHashMap<>();
        if (item.asks() instanceof Ask.Table table) {
            for (int i = 0; i < table.columns().size(); i++) {
                titles.put(
                        key + ":" + (i + 1),
                        Words.of(
                                "quality.columnOf",
                                item.title(),
                                table.columns().get(i).title()));
            }
        } else {
            titles.put(key, item.title());
        }
        return titles;
    }

    public String of(Charted charted) {
        return switch (charted.sort()) {
            case ITEM, JOINT -> byKey.getOrDefault(charted.key(), charted.code());
            case FAMILY -> Words.of("quality.chartOfFamily", charted.code());
            case INSTRUMENT -> Words.of("quality.chartOfInstrument", charted.code());
        };
    }
}
