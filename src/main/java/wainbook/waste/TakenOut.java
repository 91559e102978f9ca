package wainbook.waste;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.process.sheet.Ask;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.process.stream.MaterialStream;
import wainbook.station.ItemState;
import wainbook.station.StationSaying.Counted;
import wainbook.station.work.Workplace;
import wainbook.waste.Said.OfThing;

/** Everything that was taken out of a vehicle: what the items of its sheets weighed or dipped, and what was noted besides. */
@ApplicationScoped
public class TakenOut {

    private final Workplace workplace;

    TakenOut(Workplace workplace) {
        this.workplace = workplace;
    }

    public List<Thing> of(History history) {
        return WorkOrder.of(history).map(order -> of(history, order)).orElse(List.of());
    }

    public Optional<Thing> of(History history, String key) {
        return of(history).stream().filter(thing -> thing.key().equals(key)).findFirst();
    }

    private List<Thing> of(History history, WorkOrder order) {
        Said said = Said.of(history);
        Stream<Thing> weighed = order.gates().stream()
                .flatMap(stage -> workplace.record(history, order, stage).stream()
                        .flatMap(record -> record.items().stream())
                        .flatMap(item -> weighed(stage, item, said).stream()));
        List<Thing> known = Stream.concat(weighed, noted(history, said)).toList();
        return Stream.concat(known.stream(), left(known, said, order)).toList();
    }

    private static Optional<Thing> weighed(String stage, ItemState item, Said said) {
        if (!(item.item().asks() instanceof Ask.Quantity ask)) {
            return Optional.empty();
        }
        return ask.stream()
                .flatMap(stream -> item.passing().flatMap(entry -> weighed(stage, item, stream, entry, said)));
    }

    private static Optional<Thing> weighed(
            String stage, ItemState item, MaterialStream stream, Entry entry, Said said) {
        if (!(entry.saying() instanceof Counted counted) || counted.quantity().signum() <= 0) {
            return Optional.empty();
        }
        String key = stage + "." + item.key();
        return ListOfWaste.ours()
                .find(stream.code())
                .flatMap(row -> stream.massKg(counted.quantity(), counted.unit())
                        .map(mass -> new Thing(
                                key,
                                stream.name().orElse(item.item().title()),
                                row,
                                mass,
                                Optional.of(counted.quantity())
                                        .filter(some -> counted.unit().equals("l")),
                                stream.density().filter(some -> counted.unit().equals("l")),
                                stream.becomes(),
                                entry.moment().at(),
                                said.of(key))));
    }

    private static Stream<Thing> noted(History history, Said said) {
        return history.saying(WasteSaying.Removed.class).flatMap(entry -> {
            var removed = (WasteSaying.Removed) entry.saying();
            OfThing of = said.of(removed.thing());
            return ListOfWaste.ours()
                    .find(removed.code())
                    .map(row -> new Thing(
                            removed.thing(),
                            removed.what(),
                            row,
                            removed.massKg(),
                            Optional.empty(),
                            Optional.empty(),
                            removed.fate(),
                            entry.moment().at(),
                            of))
                    .stream();
        });
    }

    /** What lies in a container though its weighing was voided since: it went out of the vehicle all the same. */
    private static Stream<Thing> left(List<Thing> known, Said said, WorkOrder order) {
        return said.byThing().entrySet().stream()
                .filter(one -> known.stream().noneMatch(thing -> thing.key().equals(one.getKey())))
                .flatMap(one -> one.getValue().placed().stream()
                        .flatMap(placed -> ListOfWaste.ours().find(placed.code()).stream()
                                .map(row -> new Thing(
                                        one.getKey(),
                                        placed.what(),
                                        row,
                                        placed.massKg(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        Fate.RECYCLE,
                                        order.since().orElse(Instant.EPOCH),
                                        one.getValue()))));
    }
}
