package wainbook.station.calibration;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.ControllersRead;
import wainbook.process.Releases;
import wainbook.process.calibration.Setting;
import wainbook.process.sheet.Ask;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Tabled;

/**
 * By the items of the sheets that ask for it: lots of the parts {@code CALIBRATION} and {@code CALIBRATION-FILE}, and readings whose
 * quantity or column is named as the {@link Setting} is. Only what passes counts; where it was read twice, the last time does.
 */
@ApplicationScoped
class ReadAtStation implements ControllersRead {

    private static final String CALIBRATION = "CALIBRATION";
    private static final String FILE = "CALIBRATION-FILE";

    private record Passed(ItemState item, Entry entry) {}

    private final Releases releases;

    ReadAtStation(Releases releases) {
        this.releases = releases;
    }

    @Override
    public Read of(History history) {
        Map<Setting, BigDecimal> values = new EnumMap<>(Setting.class);
        Optional<String> calibration = Optional.empty();
        Optional<String> file = Optional.empty();
        for (Passed passed : passed(history).toList()) {
            if (passed.entry.saying() instanceof LotUsed said) {
                calibration = said.part().equals(CALIBRATION) ? Optional.of(said.lot()) : calibration;
                file = said.part().equals(FILE) ? Optional.of(said.lot()) : file;
            } else {
                values(passed, values);
            }
        }
        return new Read(calibration, file, values);
    }

    private Stream<Passed> passed(History history) {
        return WorkOrder.of(history).stream()
                .flatMap(order -> order.gates().stream()
                        .flatMap(stage -> StageRecord.of(history, order, stage, releases::sheet).stream()))
                .flatMap(record -> record.items().stream())
                .flatMap(item -> item.passing().map(entry -> new Passed(item, entry)).stream())
                .sorted(Comparator.comparingLong(passed -> passed.entry().number()));
    }

    private static void values(Passed passed, Map<Setting, BigDecimal> values) {
        Ask asks = passed.item.item().asks();
        if (passed.entry.saying() instanceof Measured said && asks instanceof Ask.Measure measure) {
            Setting.asked(measure.quantity(), measure.unit()).ifPresent(setting -> values.put(setting, said.reading()));
        } else if (passed.entry.saying() instanceof Tabled said
                && asks instanceof Ask.Table table
                && table.rows().size() == 1
                && said.cells().size() == table.columns().size()) {
            IntStream.range(0, said.cells().size())
                    .forEach(column -> Setting.asked(
                                    table.columns().get(column).title(),
                                    table.columns().get(column).unit())
                            .ifPresent(
                                    setting -> values.put(setting, said.cells().get(column))));
        }
    }
}
