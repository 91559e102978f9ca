package wainbook.waste.act;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.Said;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.ContainerOpened;
import wainbook.waste.WasteSaying.Measure;

/** Containers and vehicles without a ledger: what is said of each is kept in its stream, by the same rules and the same lines. */
final class Filling {

    static final Instant NINE = Instant.parse("2026-03-10T09:00:00Z");

    private final Map<Subject, History> streams = new HashMap<>();
    private int entries;

    History stream(Subject subject) {
        return streams.getOrDefault(subject, History.empty(subject));
    }

    void say(Subject subject, Saying saying) {
        History history = stream(subject);
        streams.put(
                subject,
                history.and(new Entry(
                        new UUID(7, entries++),
                        subject,
                        history.number() + 1,
                        Moment.of("7001", NINE.plusSeconds(entries)),
                        "0".repeat(64),
                        saying)));
    }

    void say(Decision decision) {
        decision.lines().forEach(line -> say(line.subject(), line.saying()));
    }

    void open(String label, String code, String capacity, Measure measure) {
        say(
                Labels.subject(label),
                new ContainerOpened(code, new BigDecimal(capacity), measure, "Yard", true, true, Optional.empty(), 90));
    }

    Container container(String label) {
        return Container.of(stream(Labels.subject(label))).orElseThrow();
    }

    Thing thing(String order, String key, String code, String massKg, Optional<BigDecimal> volumeL) {
        return new Thing(
                key,
                "some of " + code,
                ListOfWaste.ours().find(code).orElseThrow(),
                new BigDecimal(massKg),
                volumeL,
                Optional.empty(),
                Fate.RECYCLE,
                NINE,
                Said.of(stream(Subject.workOrder(order))).of(key));
    }

    /** Puts it in where nothing stands against it, as the act does. */
    List<Reason> put(String label, String order, Thing thing) {
        List<Reason> against =
                PutInRule.against(Container.of(stream(Labels.subject(label))), label, Optional.of(thing), thing.key());
        if (against.isEmpty()) {
            say(PuttingIn.said(thing, Labels.subject(label), Subject.workOrder(order)));
        }
        return against;
    }
}
