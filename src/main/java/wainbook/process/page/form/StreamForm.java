package wainbook.process.page.form;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.draft.Surroundings;
import wainbook.process.stream.Density;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.process.stream.MaterialStream;

/** What comes out of the vehicle at an item that weighs or dips, as fields. */
final class StreamForm {

    private StreamForm() {}

    static List<Input> inputs(Surroundings around) {
        return List.of(
                Input.line("unit"),
                Input.decimal("expected"),
                Input.line("streamName"),
                Input.choiceOrNone(
                        "stream",
                        ListOfWaste.ours().entries().stream()
                                .map(row -> new Option(row.code(), row.code() + " " + row.title()))
                                .toList()),
                Input.choiceOrNone(
                        "fate",
                        Arrays.stream(Fate.values())
                                .map(fate -> new Option(fate.name(), Words.of("process.fate." + fate.name())))
                                .toList()),
                Input.decimal("kgPerL"),
                Input.line("densitySource"));
    }

    /** Empty where no stream is named. */
    static Optional<MaterialStream> read(Typed typed) {
        return typed.maybe("stream").flatMap(code -> {
            if (ListOfWaste.ours().find(code).isEmpty()) {
                typed.wrong("stream", "process.fieldChoice");
                return Optional.empty();
            }
            return Optional.of(
                    new MaterialStream(name(typed), code, typed.maybeOne("fate", Fate.class), density(typed)));
        });
    }

    private static Optional<String> name(Typed typed) {
        return typed.maybe("streamName").filter(text -> {
            boolean fits = text.length() <= MaterialStream.LONGEST_NAME;
            if (!fits) {
                typed.wrong("streamName", "process.fieldLong", MaterialStream.LONGEST_NAME);
            }
            return fits;
        });
    }

    private static Optional<Density> density(Typed typed) {
        return typed.maybeDecimal("kgPerL").flatMap(kgPerL -> {
            Optional<String> source = typed.maybe("densitySource").filter(text -> text.length() <= 200);
            if (source.isEmpty()) {
                typed.wrong("densitySource", "process.fieldDensitySource");
            }
            if (kgPerL.signum() <= 0 || kgPerL.intValue() >= 20) {
                typed.wrong("kgPerL", "process.fieldDensity");
                return Optional.empty();
            }
            return source.map(text -> new Density(kgPerL, text));
        });
    }

    static Map<String, String> typed(MaterialStream stream) {
        return Map.of(
                "streamName", stream.name().orElse(""),
                "stream",
                        ListOfWaste.ours()
                                .find(stream.code())
                                .map(ListOfWaste.Row::code)
                                .orElse(stream.code()),
                "fate", stream.fate().map(Fate::name).orElse(""),
                "kgPerL",
                        stream.density()
                                .map(known -> known.kgPerL().toPlainString())
                                .orElse(""),
                "densitySource", stream.density().map(Density::source).orElse(""));
    }
}
