package wainbook.bench;

import io.quarkus.arc.Arc;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.rehearsal.PlayedVehicles.AtWork;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.entry.Recording;
import wainbook.station.entry.Voiding;
import wainbook.station.work.Workplace;
import wainbook.works.instruments.InstrumentRow;

/**
 * What a technician waits for after every entry. The same item is recorded again and again and made void in between, which
 * is not timed; now and then another vehicle takes over, since the record would grow longer than any vehicle's.
 */
final class RecordingAnEntry implements Comparison.Go, AutoCloseable {

    private static final int ENTRIES_A_VEHICLE = 20;

    /** An item, and what is answered to it. */
    private record Item(String order, String key, Optional<String> instrument, Reply reply, Actor actor) {}

    private final Recording recording =
            Arc.container().instance(Recording.class).get();
    private final Voiding voiding = Arc.container().instance(Voiding.class).get();
    private final Workplace workplace =
            Arc.container().instance(Workplace.class).get();
    private final Ledger ledger = Arc.container().instance(Ledger.class).get();
    private final Supplier<AtWork> vehicles;
    private int recorded;
    private Optional<AtWork> vehicle = Optional.empty();
    private Optional<Item> item = Optional.empty();
    private Optional<Entry> last = Optional.empty();

    private RecordingAnEntry(Supplier<AtWork> vehicles) {
        this.vehicles = vehicles;
    }

    static RecordingAnEntry at(Supplier<AtWork> vehicles) {
        return new RecordingAnEntry(vehicles);
    }

    Comparison comparison(String where, PlainRows rows, String sentence) {
        List<String> one = List.of(sentence);
        return new Comparison(
                "record one entry " + where, 1, this, "one INSERT in one transaction", () -> () -> rows.insert(one));
    }

    @Override
    public Callable<?> ready() {
        makeVoid();
        if (recorded++ % ENTRIES_A_VEHICLE == 0) {
            close();
            vehicle = Optional.of(vehicles.get());
            item = Optional.of(item(vehicle.get().number()));
        }
        Item open = item.orElseThrow();
        var asked =
                new Recording.ToRecord(UUID.randomUUID(), open.order(), open.key(), open.instrument(), open.reply());
        return () -> {
            last = Optional.of(done(recording.record(asked, open.actor())));
            return last;
        };
    }

    @Override
    public void close() {
        makeVoid();
        vehicle.ifPresent(gone -> gone.leaving().run());
        vehicle = Optional.empty();
    }

    private void makeVoid() {
        last.ifPresent(entry -> done(voiding.voidEntry(
                new Voiding.ToVoid(UUID.randomUUID(), entry.subject().code(), entry.id(), "Recorded to be measured"),
                item.orElseThrow().actor())));
        last = Optional.empty();
    }

    /** The first that can be recorded as the vehicle stands, by whoever recorded last. */
    private Item item(String number) {
        History history = ledger.history(Subject.workOrder(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow();
        Moment before = history.entries().get(history.entries().size() - 1).moment();
        Actor actor = Actor.of(before.who(), Clock.fixed(before.at(), ZoneOffset.UTC));
        return workplace.record(history, order, order.stage().orElseThrow()).orElseThrow().unsettled().stream()
                .map(ItemState::item)
                .filter(known ->
                        known.condition() == Condition.NONE && known.parts().isEmpty())
                .flatMap(known -> reply(known).stream()
                        .flatMap(reply -> instruments(known)
                                .filter(code -> workplace
                                        .against(history, actor.at(before.at()), known.key(), code)
                                        .isEmpty())
                                .map(code -> new Item(number, known.key(), code, reply, actor))))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Reply> reply(CheckItem item) {
        if (item.asks() instanceof Ask.Measure measure) {
            return measure.works()
                    .filter(limits ->
                            limits.lower().isPresent() && limits.upper().isPresent())
                    .map(limits -> Reply.with()
                            .reading(limits.lower()
                                    .get()
                                    .add(limits.upper().get())
                                    .divide(BigDecimal.valueOf(2)))
                            .build());
        }
        if (item.asks() instanceof Ask.Choice choice) {
            return choice.options().stream()
                    .filter(Ask.Choice.Option::passes)
                    .findFirst()
                    .map(option -> Reply.with().choice(option.text()).build());
        }
        return item.asks() instanceof Ask.Text
                ? Optional.of(Reply.with().words("None found").build())
                : Optional.of(Reply.done()).filter(done -> item.asks() instanceof Ask.Confirm);
    }

    private static Stream<Optional<String>> instruments(CheckItem item) {
        return Optional.of(item.asks())
                .filter(Ask.Measure.class::isInstance)
                .flatMap(asks -> ((Ask.Measure) asks).instrumentKind())
                .map(kind -> InstrumentRow.ofKind(kind).stream().map(row -> Optional.of(row.code)))
                .orElse(Stream.of(Optional.empty()));
    }

    private static Entry done(Outcome<Entry> outcome) {
        return outcome.fold(entry -> entry, reasons -> {
            throw new AssertionError(reasons);
        });
    }
}
