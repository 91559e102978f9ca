package wainbook.book.chapter;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.process.sheet.Ask;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Counted;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.words.Wanted;

/**
 * A mass that was weighed on the vehicle, by the entry that an item stands by.
 *
 * @param limits it was judged by, in words
 */
record Weights(String stage, String item, BigDecimal kilogram, String limits, Entry entry) {

    private static final String KILOGRAM = "kg";

    /** In the order of the stages and their sheets: axles as received and as built, parts that went out and came in. */
    static List<Weights> of(Material material) {
        return material.stages().stream()
                .flatMap(stage -> stage.items().stream().flatMap(item -> of(stage, item)))
                .toList();
    }

    private static Stream<Weights> of(StageRecord stage, ItemState item) {
        return item.passing().stream().flatMap(entry -> {
            if (entry.saying() instanceof Measured said && said.unit().equals(KILOGRAM)) {
                return Stream.of(one(stage, item, said.reading(), VehicleChapter.limits(said), entry));
            }
            if (entry.saying() instanceof Counted said && said.unit().equals(KILOGRAM)) {
                return Stream.of(one(stage, item, said.quantity(), "", entry));
            }
            return entry.saying() instanceof Tabled said && item.item().asks() instanceof Ask.Table asked
                    ? cells(stage, item, asked, said, entry)
                    : Stream.empty();
        });
    }

    private static Weights one(StageRecord stage, ItemState item, BigDecimal kilogram, String limits, Entry entry) {
        return new Weights(stage.stage(), item.item().title(), kilogram, limits, entry);
    }

    private static Stream<Weights> cells(StageRecord stage, ItemState item, Ask.Table asked, Tabled said, Entry entry) {
        int columns = asked.columns().size();
        return IntStream.range(
                        0, Math.min(said.cells().size(), columns * asked.rows().size()))
                .filter(cell -> asked.columns().get(cell % columns).unit().equals(KILOGRAM))
                .mapToObj(cell -> new Weights(
                        stage.stage(),
                        item.item().title() + ": " + asked.rows().get(cell / columns),
                        said.cells().get(cell),
                        limits(asked.columns().get(cell % columns)),
                        entry));
    }

    private static String limits(Ask.Table.Column column) {
        return Stream.of(column.works(), column.legal())
                .flatMap(Optional::stream)
                .map(limits -> Wanted.said(limits) + " " + KILOGRAM)
                .reduce((former, latter) -> former + "; " + latter)
                .orElse("");
    }
}
