package wainbook.paper.page.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.paper.page.sheet.Section.Column;
import wainbook.paper.page.sheet.Section.Kind;
import wainbook.paper.page.sheet.Section.Row;
import wainbook.permit.Permit;
import wainbook.permit.Precaution;
import wainbook.permit.Trait;
import wainbook.permit.Work;

/** The parts of a permit form. */
public final class PermitSections {

    /** A kind of work with what is seen to before it. */
    public record Asked(String sort, List<Tick> precautions) {}

    /** @param naming whether something is written beside it */
    public record Tick(String text, boolean naming) {}

    private PermitSections() {}

    public static List<Option> sorts() {
        return Arrays.stream(Work.values())
                .map(sort -> new Option(sort.name(), word(sort)))
                .toList();
    }

    static List<Asked> asked() {
        return Arrays.stream(Work.values())
                .map(sort -> new Asked(
                        word(sort),
                        sort.precautions().stream()
                                .map(one ->
                                        new Tick(option(one).text(), naming(one).isPresent()))
                                .toList()))
                .toList();
    }

    public static List<Option> precautions() {
        return Arrays.stream(Precaution.values()).map(PermitSections::option).toList();
    }

    public static List<Option> circumstances() {
        return Trait.circumstances().stream()
                .map(trait -> new Option(trait.name(), Words.of("permit.trait." + trait.name())))
                .toList();
    }

    public static Section signs() {
        return new Section(
                "sign",
                Words.of("paper.part.sign"),
                Words.of("paper.note.sign", Permit.FIRE_WATCH.toMinutes()),
                List.of(
                        new Column("who", Words.of("paper.column.who"), Kind.TEXT),
                        new Column("time", Words.of("paper.column.time"), Kind.TIME)),
                List.of(row("issued"), row("received"), row("until"), row("handedBack"), row("closed")));
    }

    /** What stands beside a tick: the number of the gear or of the person, or words. */
    static Optional<String> naming(Precaution precaution) {
        return switch (precaution.names()) {
            case NOTHING -> Optional.empty();
            case PERSON -> Optional.of(Words.of("paper.namePerson"));
            case WORDS -> Optional.of(Words.of("paper.nameWords"));
            case GEAR, GEAR_IF_KEPT, GEAR_IF_USED -> Optional.of(Words.of("paper.nameGear"));
        };
    }

    private static Option option(Precaution precaution) {
        String text = Words.of("permit.precaution." + precaution.name());
        return new Option(
                precaution.name(),
                naming(precaution).map(naming -> text + " – " + naming).orElse(text));
    }

    private static Row row(String key) {
        return new Row(key, Words.of("paper.row." + key), "");
    }

    private static String word(Work sort) {
        return Words.of("permit.sort." + sort.name());
    }
}
