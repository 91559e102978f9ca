package wainbook.waste.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.waste.Container;
import wainbook.waste.ContainerRow;
import wainbook.waste.Labels;
import wainbook.waste.Said;
import wainbook.waste.TakenOut;
import wainbook.waste.Thing;
import wainbook.works.shift.WorksDay;

/** Reads containers, and what was taken out of vehicles, for whoever looks at them. */
@ApplicationScoped
public class WasteLook {

    private final Ledger ledger;
    private final TakenOut takenOut;
    private final WorksDay day;

    WasteLook(Ledger ledger, TakenOut takenOut, WorksDay day) {
        this.ledger = ledger;
        this.takenOut = takenOut;
        this.day = day;
    }

    public List<ContainerLine> lines(Instant now) {
        return ContainerRow.all().stream().map(row -> line(row, now)).toList();
    }

    private ContainerLine line(ContainerRow row, Instant now) {
        return new ContainerLine(row, now, day.zone());
    }

    ContainerView container(String label, Filled filled, Instant now) {
        History history = ledger.history(Labels.subject(label));
        Container known = Container.of(history).orElseThrow(NotFoundException::new);
        ContainerRow row = ContainerRow.<ContainerRow>findByIdOptional(label).orElseThrow(NotFoundException::new);
        return new ContainerView(known, line(row, now), history.number(), filled);
    }

    /** The note under which a container of this code left last. */
    Optional<Container> leftLast(String code) {
        return ContainerRow.leftLast(code).flatMap(row -> Container.of(ledger.history(Labels.subject(row.label))));
    }

    StripView strip(String number, Filled filled, Instant now, boolean may) {
        History history = ledger.history(Numbers.subject(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        List<Thing> things = takenOut.of(history);
        return new StripView(
                order,
                things,
                containers(things),
                room(things, now),
                Said.of(history).engine(),
                day.of(now),
                filled,
                may);
    }

    /** Those that hold any of the things. */
    private Map<String, Container> containers(List<Thing> things) {
        Map<String, Container> known = new LinkedHashMap<>();
        things.stream()
                .flatMap(thing -> thing.container().stream())
                .distinct()
                .forEach(label -> Container.of(ledger.history(Labels.subject(label)))
                        .ifPresent(container -> known.put(label, container)));
        return known;
    }

    /** The open containers of each code that something unplaced has. */
    private Map<String, List<ContainerLine>> room(List<Thing> things, Instant now) {
        Map<String, List<ContainerLine>> room = new LinkedHashMap<>();
        things.stream()
                .filter(thing -> thing.standing() == Thing.Standing.UNPLACED
                        && thing.fate().waste())
                .map(thing -> thing.row().code())
                .distinct()
                .forEach(code -> room.put(
                        code,
                        ContainerRow.openFor(code).stream()
                                .map(row -> line(row, now))
                                .toList()));
        return room;
    }

    ThingView thing(String number, String key, Filled filled, Instant now) {
        StripView strip = strip(number, filled, now, true);
        return new ThingView(
                strip,
                strip.all().stream()
                        .filter(line -> line.thing().key().equals(key))
                        .findFirst()
                        .orElseThrow(NotFoundException::new),
                filled);
    }
}
