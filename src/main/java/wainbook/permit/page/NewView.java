package wainbook.permit.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.permit.Precaution;
import wainbook.permit.Trait;
import wainbook.permit.Work;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;
import wainbook.works.instruments.InstrumentRow;

/** The form of a new permit: first what kind of work and where, then what the kind asks for. */
public record NewView(Filled filled, Optional<Work> sort) {

    /** One precaution to tick. */
    public record Line(Precaution precaution, Filled filled) {

        public String key() {
            return precaution.name();
        }

        public String text() {
            return Words.of("permit.precaution." + precaution.name());
        }

        public boolean ticked() {
            return !filled.value(key()).isEmpty();
        }

        public String naming() {
            return key() + "-naming";
        }

        public boolean names() {
            return precaution.names() != Precaution.Names.NOTHING;
        }

        public String namingText() {
            return Words.of("permit.naming." + precaution.names().name());
        }

        /** What can be named; empty where it is free words. */
        public List<Option> choices() {
            if (precaution.names() == Precaution.Names.PERSON) {
                return people();
            }
            return precaution.gear().stream()
                    .sorted()
                    .flatMap(kind -> InstrumentRow.ofKind(kind).stream())
                    .map(row -> new Option(row.code, row.inWords()))
                    .toList();
        }

        public boolean free() {
            return precaution.names() == Precaution.Names.WORDS;
        }

        public String value() {
            return filled.value(naming());
        }
    }

    public List<Option> sorts() {
        return Arrays.stream(Work.values())
                .map(one -> new Option(one.name(), Words.of("permit.sort." + one.name())))
                .toList();
    }

    /** Vehicles that are in the works. */
    public List<Option> orders() {
        return WorkOrderRow.all().stream()
                .filter(row -> row.phase != WorkOrder.Phase.ORDERED
                        && row.phase != WorkOrder.Phase.HANDED_OVER
                        && row.phase != WorkOrder.Phase.DONOR_REJECTED)
                .map(row -> new Option(row.number, row.number))
                .toList();
    }

    public String sortWord() {
        return sort.map(one -> Words.of("permit.sort." + one.name())).orElse("");
    }

    public String where() {
        return filled.value("order").isEmpty() ? filled.value("place") : filled.value("order");
    }

    public List<Line> precautions() {
        return sort.map(Work::precautions).orElse(List.of()).stream()
                .map(one -> new Line(one, filled))
                .toList();
    }

    public List<Option> circumstances() {
        return Trait.circumstances().stream()
                .map(one -> new Option(one.name(), Words.of("permit.trait." + one.name())))
                .toList();
    }

    public boolean ticks(String field) {
        return !filled.value(field).isEmpty();
    }

    public List<Option> receivers() {
        return people();
    }

    private static List<Option> people() {
        return PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .map(row ->
                        new Option(row.number, Words.of("permit.person", PersonInWords.name(row.number), row.number)))
                .toList();
    }
}
