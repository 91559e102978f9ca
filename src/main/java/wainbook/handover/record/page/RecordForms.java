package wainbook.handover.record.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.Wordlists;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/** What stands in the forms of a handover record, fresh or come back. */
public record RecordForms(HandoverRecord record, Wordlists lists, Filled filled) {

    /** The id of a form of the page: that of the one that came back, a fresh one for all others. */
    public UUID id(String form) {
        return filled.value("form").equals(form) ? filled.id() : UUID.randomUUID();
    }

    /** What is given with the vehicle as the form asks: the works' own list, and what was written besides. */
    public List<Row> thingRows() {
        List<Thing> listed =
                record().things().map(Piece::said).map(said -> said.things()).orElse(List.of());
        var names = new ArrayList<>(lists.things());
        listed.stream().map(Thing::thing).filter(name -> !names.contains(name)).forEach(names::add);
        return IntStream.range(0, names.size())
                .mapToObj(i -> new Row(
                        i,
                        names.get(i),
                        listed.stream()
                                .filter(thing -> thing.thing().equals(names.get(i)))
                                .findFirst()
                                .map(thing -> String.valueOf(thing.count()))
                                .orElse("")))
                .toList();
    }

    /** Whether a form is drawn open: what it asks for is missing, or it came back. */
    public boolean opens(String form) {
        return filled.value("form").equals(form)
                || switch (form) {
                    case "state" -> record().state().isEmpty();
                    case "things" -> record().things().isEmpty();
                    case "warranty" -> record().warranty().isEmpty();
                    default -> false;
                };
    }

    public List<Integer> freeLines() {
        return List.of(0, 1, 2);
    }

    public String free(int line) {
        return filled.value("free" + line);
    }

    public String freeCount(int line) {
        return filled.value("freeCount" + line);
    }

    /** The field that a fault of closing this snag is shown at. */
    public String doneField(SnagLine snag) {
        return opens(snag.form()) ? "done" : "done-" + snag.said().snag();
    }

    public List<Option> sorts() {
        return Arrays.stream(Sort.values())
                .map(sort -> new Option(sort.name(), Words.of("handover.recordSort." + sort.name())))
                .toList();
    }

    /** @param count as it was listed last */
    public record Row(int index, String name, String count) {}

    public String count(Row row) {
        return filled.value("form").equals("things") ? filled.value("count" + row.index()) : row.count();
    }

    public List<Row> topicRows() {
        List<String> topics = lists.topics();
        return IntStream.range(0, topics.size())
                .mapToObj(i -> new Row(i, topics.get(i), ""))
                .toList();
    }

    public boolean ticked(Row row) {
        return filled.value("topic" + row.index()).equals("yes");
    }

    public List<Option> manners() {
        return List.of(
                new Option(Manner.DRAWN.name(), Words.of("handover.recordManner.DRAWN")),
                new Option(Manner.TYPED.name(), Words.of("handover.recordManner.TYPED")));
    }

    public List<Option> absences() {
        return List.of(
                new Option(Absence.REFUSED.name(), Words.of("handover.recordAbsence.REFUSED")),
                new Option(Absence.NOT_PRESENT.name(), Words.of("handover.recordAbsence.NOT_PRESENT")));
    }
}
