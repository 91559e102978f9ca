package wainbook.process.draft;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Limits;

/** A check item in words. */
public final class ItemInWords {

    private ItemInWords() {}

    static Part part(CheckItem item) {
        Part.Writer part = Part.of(Part.Group.ITEM, item.key(), item.title())
                .say("title", item.title())
                .say("asks", asks(item.asks()));
        ask(part, item.asks());
        return part.say("condition", Words.of("process.condition." + item.condition()))
                .say("competence", item.competence())
                .say("caution", item.caution())
                .say("plannedMinutes", Words.of("page.minutes", item.plannedMinutes()))
                .say("zone", item.zone())
                .say(
                        "parts",
                        item.parts().stream()
                                .map(use -> use.part() + " × " + use.count())
                                .collect(Collectors.joining(", ")))
                .say("after", String.join(", ", item.after()))
                .say(
                        "dependsOn",
                        item.dependsOn().stream()
                                .map(on -> Words.of("process.dependence." + on.sort(), on.code()))
                                .collect(Collectors.joining(", ")))
                .say("appliesWhen", item.appliesWhen())
                .say("tries", item.tries())
                .say("noConcession", item.noConcession().map(bar -> Words.of("process.beyond." + bar)))
                .part();
    }

    /** What it asks for, in one or two words. */
    public static String asks(Ask ask) {
        return Words.of("process.asks." + kind(ask));
    }

    /** The kind of ask as sheets and pages name it. */
    public static String kind(Ask ask) {
        return ask.getClass().getSimpleName().toLowerCase(Words.LOCALE);
    }

    private static void ask(Part.Writer part, Ask ask) {
        if (ask instanceof Ask.Measure measure) {
            part.say("quantity", measure.quantity())
                    .say("unit", measure.unit())
                    .say("works", measure.works().map(ItemInWords::limits))
                    .say("legal", measure.legal().map(ItemInWords::limits))
                    .say("instrumentKind", measure.instrumentKind())
                    .say("calculation", measure.calculation());
        } else if (ask instanceof Ask.Determine determine) {
            part.say("quantity", determine.quantity())
                    .say("method", Words.of("process.method." + determine.method()))
                    .say(
                            "given",
                            determine.given().stream()
                                    .map(given -> given.name() + " = "
                                            + given.value()
                                                    .map(value -> value.toPlainString())
                                                    .or(given::item)
                                                    .orElseThrow())
                                    .collect(Collectors.joining("; ")))
                    .say("determinedParts", String.join("; ", determine.parts()))
                    .say("works", determine.works().map(ItemInWords::limits))
                    .say("instrumentKind", determine.instrumentKind());
        } else if (ask instanceof Ask.Table table) {
            part.say(
                            "columns",
                            table.columns().stream().map(ItemInWords::column).collect(Collectors.joining("; ")))
                    .say("rows", String.join("; ", table.rows()))
                    .say("instrumentKind", table.instrumentKind());
        } else if (ask instanceof Ask.Choice || ask instanceof Ask.Attended) {
            List<Ask.Choice.Option> options =
                    ask instanceof Ask.Choice choice ? choice.options() : ((Ask.Attended) ask).options();
            part.say(
                    "options",
                    options.stream()
                            .map(option -> option.text() + " ("
                                    + Words.of(option.passes() ? "process.passes" : "process.fails") + ")")
                            .collect(Collectors.joining("; ")));
        } else {
            plainAsk(part, ask);
        }
    }

    private static void plainAsk(Part.Writer part, Ask ask) {
        if (ask instanceof Ask.Tighten tighten) {
            part.say("joint", tighten.joint());
        } else if (ask instanceof Ask.Recheck recheck) {
            part.say("joint", recheck.joint())
                    .say("afterMinutes", recheck.afterMinutes().map(String::valueOf))
                    .say("byKm", recheck.byKm().map(String::valueOf));
        } else if (ask instanceof Ask.Confirm confirm) {
            part.say("joint", confirm.joint());
        } else if (ask instanceof Ask.Serial serial) {
            part.say("part", serial.part()).say("pattern", serial.pattern());
        } else if (ask instanceof Ask.Lot lot) {
            part.say("part", lot.part());
        } else if (ask instanceof Ask.Quantity quantity) {
            part.say("unit", quantity.unit())
                    .say("expected", quantity.expected().map(value -> value.toPlainString()))
                    .say("stream", quantity.stream().map(stream -> stream.code()))
                    .say("streamName", quantity.stream().flatMap(stream -> stream.name()))
                    .say(
                            "fate",
                            quantity.stream()
                                    .flatMap(stream -> stream.fate())
                                    .map(fate -> Words.of("process.fate." + fate)))
                    .say(
                            "kgPerL",
                            quantity.stream()
                                    .flatMap(stream -> stream.density())
                                    .map(known -> known.kgPerL().toPlainString()))
                    .say(
                            "densitySource",
                            quantity.stream()
                                    .flatMap(stream -> stream.density())
                                    .map(known -> known.source()));
        } else if (ask instanceof Ask.Recount recount) {
            part.say("item", recount.item()).say("unit", recount.unit());
        } else if (ask instanceof Ask.Text text) {
            part.say("prompt", text.prompt()).say("maxLength", text.maxLength());
        } else if (ask instanceof Ask.Wait wait) {
            part.say("minutes", Words.of("page.minutes", wait.minutes()));
        } else if (ask instanceof Ask.Software software) {
            part.say("module", software.module()).say("version", software.version());
        } else if (ask instanceof Ask.File file) {
            part.say("mediaTypes", String.join(", ", file.mediaTypes()));
        }
    }

    private static String column(Ask.Table.Column column) {
        List<String> limits = Optional.of(column).stream()
                .flatMap(one -> Stream.concat(
                        one.works().map(ends -> Words.of("process.worksShort", limits(ends))).stream(),
                        one.legal().map(ends -> Words.of("process.legalShort", limits(ends))).stream()))
                .toList();
        return column.title() + " [" + column.unit() + "]" + (limits.isEmpty() ? "" : " " + String.join(", ", limits));
    }

    /** Limits as they are read aloud; the source with them, since a limit without one is worth less. */
    static String limits(Limits limits) {
        String ends = limits.lower().isPresent() && limits.upper().isPresent()
                ? Words.of(
                        limits.strict() ? "process.limitsInside" : "process.limitsBetween",
                        limits.lower().get().toPlainString(),
                        limits.upper().get().toPlainString())
                : limits.lower()
                        .map(lower -> Words.of(
                                limits.strict() ? "process.limitsAbove" : "process.limitsAtLeast",
                                lower.toPlainString()))
                        .orElseGet(() -> Words.of(
                                limits.strict() ? "process.limitsBelow" : "process.limitsAtMost",
                                limits.upper().orElseThrow().toPlainString()));
        return limits.source()
                .map(source -> Words.of("process.limitsWithSource", ends, source))
                .orElse(ends);
    }

    static String window(Joint.Window window) {
        return Words.of(
                "process.limitsBetween",
                window.lower().toPlainString(),
                window.upper().toPlainString());
    }
}
