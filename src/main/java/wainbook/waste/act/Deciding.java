package wainbook.waste.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Labels;
import wainbook.waste.Said;
import wainbook.waste.TakenOut;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.LeftAsPart;
import wainbook.waste.WasteSaying.Removed;
import wainbook.waste.WasteSaying.Tested;
import wainbook.works.shift.WorksDay;

/** What becomes of something taken out of a vehicle: noted where no item weighs it, decided, tested, given to whoever gets it. */
@ApplicationScoped
public class Deciding {

    private static final int LONGEST_PARTY = 80;
    private static final int YEARS_AHEAD = 3;

    public record ToNote(UUID id, String order, String what, String code, BigDecimal massKg, Fate fate)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Removed.class;
        }
    }

    public record ToDecide(
            UUID id,
            String order,
            String thing,
            Fate fate,
            Optional<String> party,
            Optional<LocalDate> dueOn,
            Optional<String> place,
            String why)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Decided.class;
        }
    }

    public record ToTest(UUID id, String order, String thing, boolean fit, String found) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Tested.class;
        }
    }

    /** @param to who got it, a firm by its code */
    public record ToGive(UUID id, String order, String thing, String to, String reference) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return LeftAsPart.class;
        }
    }

    private final Ledger ledger;
    private final TakenOut takenOut;
    private final WorksDay day;

    Deciding(Ledger ledger, TakenOut takenOut, WorksDay day) {
        this.ledger = ledger;
        this.takenOut = takenOut;
        this.day = day;
    }

    public Outcome<Entry> note(ToNote asked, Actor actor) {
        Subject subject = Numbers.subject(asked.order());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            var against = new ArrayList<Reason>();
            if (WorkOrder.of(history).isEmpty()) {
                against.add(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            Optional<ListOfWaste.Row> row = ListOfWaste.ours().find(asked.code());
            if (row.isEmpty()) {
                against.add(Reason.of("waste.codeUnknown", "Decision 2000/532/EC", asked.code())
                        .liftedAt("#code"));
            }
            Typed.words(asked.what(), "what").ifPresent(against::add);
            Typed.mass(asked.massKg(), "massKg").ifPresent(against::add);
            return against.isEmpty()
                    ? Decision.say(
                            subject,
                            new Removed(
                                    Said.of(history).nextThing(),
                                    asked.what(),
                                    row.orElseThrow().code(),
                                    asked.massKg(),
                                    asked.fate()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> decide(ToDecide asked, Actor actor) {
        Subject subject = Numbers.subject(asked.order());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(here(takenOut.of(reading.of(subject), asked.thing()), asked.thing()));
            against.addAll(fitting(asked, day.of(reading.moment().at())));
            return against.isEmpty()
                    ? Decision.say(
                            subject,
                            new Decided(
                                    asked.thing(),
                                    asked.fate(),
                                    asked.party(),
                                    asked.dueOn(),
                                    asked.place(),
                                    asked.why()))
                    : Decision.refuse(against);
        });
    }

    /** Who gets it and by when, for what leaves as a part; where it lies, for what stays; neither for what is discarded. */
    static List<Reason> fitting(ToDecide asked, LocalDate today) {
        var against = new ArrayList<Reason>();
        Typed.length(asked.why(), "why").ifPresent(against::add);
        Typed.maybe(asked.place(), "place").ifPresent(against::add);
        if (asked.fate().leaves()) {
            if (asked.party().filter(text -> text.length() <= LONGEST_PARTY).isEmpty()) {
                against.add(Reason.of("waste.partyMissing", Reason.WORKS_RULE, LONGEST_PARTY)
                        .liftedAt("#party"));
            }
            if (asked.dueOn().isEmpty()) {
                against.add(Reason.of("waste.dueMissing", Reason.WORKS_RULE).liftedAt("#dueOn"));
            }
        }
        asked.dueOn()
                .filter(day -> day.isAfter(today.plusYears(YEARS_AHEAD)))
                .ifPresent(day -> against.add(Reason.of("waste.dueTooFar", Reason.WORKS_RULE, YEARS_AHEAD)
                        .liftedAt("#dueOn")));
        if (asked.fate().stays() && asked.place().isEmpty()) {
            against.add(Reason.of("waste.placeMissing", Reason.WORKS_RULE).liftedAt("#place"));
        }
        return against;
    }

    public Outcome<Entry> test(ToTest asked, Actor actor) {
        Subject subject = Numbers.subject(asked.order());
        return ledger.write(asked, actor, reading -> {
            Optional<Thing> thing = takenOut.of(reading.of(subject), asked.thing());
            var against = new ArrayList<>(here(thing, asked.thing()));
            Typed.words(asked.found(), "found").ifPresent(against::add);
            thing.filter(known -> !known.fate().stays())
                    .ifPresent(known -> against.add(Reason.of("waste.notKept", Reason.WORKS_RULE, known.what())));
            return against.isEmpty()
                    ? Decision.say(subject, new Tested(asked.thing(), asked.fit(), asked.found()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> give(ToGive asked, Actor actor) {
        Subject subject = Numbers.subject(asked.order());
        return ledger.write(asked, actor, reading -> {
            Optional<Thing> thing = takenOut.of(reading.of(subject), asked.thing());
            var against = new ArrayList<>(here(thing, asked.thing()));
            Typed.words(asked.to(), "to").ifPresent(against::add);
            Typed.length(asked.reference(), "reference").ifPresent(against::add);
            thing.filter(known -> known.fate().waste())
                    .ifPresent(known -> against.add(Reason.of("waste.isWaste", Reason.WORKS_RULE, known.what())));
            return against.isEmpty()
                    ? Decision.say(subject, new LeftAsPart(asked.thing(), asked.to(), asked.reference()))
                    : Decision.refuse(against);
        });
    }

    /** What was taken out, lies in no container, and has not left. */
    private static List<Reason> here(Optional<Thing> thing, String key) {
        if (thing.isEmpty()) {
            return List.of(Reason.of("waste.noThing", Reason.WORKS_RULE, key));
        }
        Thing known = thing.get();
        return known.container()
                .map(label -> List.of(Reason.of("waste.placedAlready", Reason.WORKS_RULE, known.what(), label)
                        .liftedAt(Labels.path(label))))
                .orElseGet(() -> known.said().left().isPresent()
                        ? List.of(Reason.of("waste.leftAlready", Reason.WORKS_RULE, known.what()))
                        : List.of());
    }
}
