package wainbook.process.page.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.draft.Surroundings;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;

/** What an item asks, as fields: each kind of ask has fields of its own. */
record AskForm(String word, Function<Typed, Ask> read, Function<Surroundings, List<Input>> inputs) {

    private static final List<AskForm> ALL = List.of(
            new AskForm(
                    "confirm",
                    typed -> new Ask.Confirm(typed.maybeCode("joint")),
                    around -> List.of(Input.choiceOrNone("joint", joints(around)))),
            new AskForm(
                    "measure",
                    AskForm::measure,
                    around -> List.of(
                            Input.line("quantity"),
                            Input.line("unit"),
                            Input.decimal("worksLower"),
                            Input.decimal("worksUpper"),
                            Input.tick("worksStrict"),
                            Input.line("worksSource"),
                            Input.decimal("legalLower"),
                            Input.decimal("legalUpper"),
                            Input.tick("legalStrict"),
                            Input.line("legalSource"),
                            Input.choiceOrNone(
                                    "instrumentKind",
                                    Input.codes(around.known().instrumentKinds().stream()
                                            .sorted()
                                            .toList())),
                            Input.line("calculation"))),
            new AskForm(
                    "table",
                    typed -> new Ask.Table(
                            TableColumns.of(typed), typed.linesDemanded("rows"), typed.maybe("instrumentKind")),
                    around -> List.of(
                            Input.area("columns"),
                            Input.area("rows"),
                            Input.choiceOrNone(
                                    "instrumentKind",
                                    Input.codes(around.known().instrumentKinds().stream()
                                            .sorted()
                                            .toList())))),
            new AskForm(
                    "tighten",
                    typed -> new Ask.Tighten(typed.code("joint")),
                    around -> List.of(Input.choice("joint", joints(around)))),
            new AskForm(
                    "recheck",
                    typed -> new Ask.Recheck(
                            typed.code("joint"),
                            typed.maybeWhole("afterMinutes", 1, 10_000),
                            typed.maybeWhole("byKm", 1, 10_000)),
                    around -> List.of(
                            Input.choice("joint", joints(around)), Input.whole("afterMinutes"), Input.whole("byKm"))),
            new AskForm("determine", DetermineForm::read, DetermineForm::inputs),
            new AskForm(
                    "serial",
                    typed -> new Ask.Serial(typed.code("part"), typed.maybe("pattern")),
                    around -> List.of(Input.line("part"), Input.line("pattern"))),
            new AskForm("lot", typed -> new Ask.Lot(typed.code("part")), around -> List.of(Input.line("part"))),
            new AskForm(
                    "quantity",
                    typed -> new Ask.Quantity(
                            typed.text("unit"), typed.maybeDecimal("expected"), StreamForm.read(typed)),
                    StreamForm::inputs),
            new AskForm(
                    "recount",
                    typed -> new Ask.Recount(typed.code("item"), typed.text("unit")),
                    around -> List.of(Input.line("item"), Input.line("unit"))),
            new AskForm("choice", AskForm::choice, around -> List.of(Input.area("options"))),
            new AskForm("attended", AskForm::attended, around -> List.of(Input.area("options"))),
            new AskForm(
                    "text",
                    typed -> new Ask.Text(typed.maybe("prompt"), typed.whole("maxLength", 1, 4000)),
                    around -> List.of(Input.line("prompt"), Input.whole("maxLength"))),
            new AskForm(
                    "wait",
                    typed -> new Ask.Wait(typed.whole("minutes", 1, 100_000)),
                    around -> List.of(Input.whole("minutes"))),
            new AskForm(
                    "software",
                    typed -> new Ask.Software(typed.code("module"), typed.text("version")),
                    around -> List.of(Input.line("module"), Input.line("version"))),
            new AskForm("file", AskForm::file, around -> List.of(Input.area("mediaTypes"))),
            new AskForm("photograph", typed -> new Ask.Photograph(), around -> List.of()));

    private static Optional<AskForm> of(String kind) {
        return ALL.stream().filter(form -> form.word.equals(kind)).findFirst();
    }

    static List<Option> kinds() {
        return ALL.stream()
                .map(form -> new Option(form.word, Words.of("process.asks." + form.word)))
                .toList();
    }

    static List<Input> inputs(String kind, Surroundings around) {
        return of(kind).orElse(ALL.get(0)).inputs.apply(around);
    }

    static Ask ask(Typed typed) {
        return of(typed.filled().value("asks"))
                .map(form -> form.read.apply(typed))
                .orElseGet(() -> {
                    typed.wrong("asks", "process.fieldChoice");
                    return new Ask.Photograph();
                });
    }

    /** What stands in the fields for an ask that is there. */
    static Map<String, String> typed(Ask ask) {
        var typed = new LinkedHashMap<String, String>();
        if (ask instanceof Ask.Confirm confirm) {
            typed.put("joint", confirm.joint().orElse(""));
        } else if (ask instanceof Ask.Tighten tighten) {
            typed.put("joint", tighten.joint());
        } else if (ask instanceof Ask.Recheck recheck) {
            typed.put("joint", recheck.joint());
            typed.put(
                    "afterMinutes", recheck.afterMinutes().map(String::valueOf).orElse(""));
            typed.put("byKm", recheck.byKm().map(String::valueOf).orElse(""));
        } else if (ask instanceof Ask.Determine determine) {
            typed.putAll(DetermineForm.typed(determine));
        } else if (ask instanceof Ask.Measure measure) {
            typed.put("quantity", measure.quantity());
            typed.put("unit", measure.unit());
            measure.works().ifPresent(limits -> typed.putAll(limits("works", limits)));
            measure.legal().ifPresent(limits -> typed.putAll(limits("legal", limits)));
            typed.put("instrumentKind", measure.instrumentKind().orElse(""));
            typed.put("calculation", measure.calculation().orElse(""));
        } else if (ask instanceof Ask.Table table) {
            typed.put("columns", TableColumns.typed(table.columns()));
            typed.put("rows", String.join("\n", table.rows()));
            typed.put("instrumentKind", table.instrumentKind().orElse(""));
        } else if (ask instanceof Ask.Choice choice) {
            typed.put("options", options(choice.options()));
        } else if (ask instanceof Ask.Attended attended) {
            typed.put("options", options(attended.options()));
        } else {
            plain(ask, typed);
        }
        return typed;
    }

    private static String options(List<Ask.Choice.Option> options) {
        return options.stream()
                .map(option -> (option.passes() ? "+ " : "- ") + option.text())
                .collect(Collectors.joining("\n"));
    }

    private static void plain(Ask ask, Map<String, String> typed) {
        if (ask instanceof Ask.Serial serial) {
            typed.put("part", serial.part());
            typed.put("pattern", serial.pattern().orElse(""));
        } else if (ask instanceof Ask.Lot lot) {
            typed.put("part", lot.part());
        } else if (ask instanceof Ask.Quantity quantity) {
            typed.put("unit", quantity.unit());
            typed.put(
                    "expected",
                    quantity.expected().map(BigDecimal::toPlainString).orElse(""));
            quantity.stream().ifPresent(stream -> typed.putAll(StreamForm.typed(stream)));
        } else if (ask instanceof Ask.Recount recount) {
            typed.put("item", recount.item());
            typed.put("unit", recount.unit());
        } else if (ask instanceof Ask.Text text) {
            typed.put("prompt", text.prompt().orElse(""));
            typed.put("maxLength", "" + text.maxLength());
        } else if (ask instanceof Ask.Wait wait) {
            typed.put("minutes", "" + wait.minutes());
        } else if (ask instanceof Ask.Software software) {
            typed.put("module", software.module());
            typed.put("version", software.version());
        } else if (ask instanceof Ask.File file) {
            typed.put("mediaTypes", String.join("\n", file.mediaTypes()));
        }
    }

    static Map<String, String> limits(String whose, Limits limits) {
        return Map.of(
                whose + "Lower", limits.lower().map(BigDecimal::toPlainString).orElse(""),
                whose + "Upper", limits.upper().map(BigDecimal::toPlainString).orElse(""),
                whose + "Strict", limits.strict() ? "yes" : "",
                whose + "Source", limits.source().orElse(""));
    }

    private static Ask measure(Typed typed) {
        return new Ask.Measure(
                typed.text("quantity"),
                typed.text("unit"),
                limits("works", typed),
                limits("legal", typed),
                typed.maybeCode("instrumentKind"),
                typed.maybeCode("calculation"));
    }

    /** A legal limit names where it comes from: nobody could check it later otherwise. */
    static Optional<Limits> limits(String whose, Typed typed) {
        Optional<BigDecimal> lower = typed.maybeDecimal(whose + "Lower");
        Optional<BigDecimal> upper = typed.maybeDecimal(whose + "Upper");
        if (lower.isEmpty() && upper.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> source = typed.maybe(whose + "Source");
        if (whose.equals("legal") && source.isEmpty()) {
            typed.wrong("legalSource", "process.fieldSource");
        }
        return Optional.of(new Limits(lower, upper, typed.tick(whose + "Strict"), source));
    }

    private static Ask attended(Typed typed) {
        return choice(typed) instanceof Ask.Choice choice ? new Ask.Attended(choice.options()) : new Ask.Photograph();
    }

    private static Ask choice(Typed typed) {
        var options = new ArrayList<Ask.Choice.Option>();
        for (String line : typed.lines("options")) {
            String text = line.substring(1).strip();
            if ("+-".indexOf(line.charAt(0)) >= 0 && !text.isEmpty() && text.length() <= 200) {
                options.add(new Ask.Choice.Option(text, line.charAt(0) == '+'));
            }
        }
        boolean fits = options.size() == typed.lines("options").size()
                && options.size() >= 2
                && options.stream().distinct().count() == options.size()
                && options.stream().anyMatch(Ask.Choice.Option::passes);
        if (!fits) {
            typed.wrong("options", "process.fieldOptions");
            return new Ask.Photograph();
        }
        return new Ask.Choice(options);
    }

    private static Ask file(Typed typed) {
        List<String> types = typed.linesDemanded("mediaTypes");
        if (types.stream().anyMatch(type -> !type.matches("[a-z]+/[a-z0-9.+-]+"))) {
            typed.wrong("mediaTypes", "process.fieldMediaTypes");
            return new Ask.Photograph();
        }
        return new Ask.File(types);
    }

    private static List<Option> joints(Surroundings around) {
        return around.known().joints().stream()
                .map(joint -> new Option(joint.code(), inWords(joint)))
                .toList();
    }

    private static String inWords(Joint joint) {
        return Words.of("process.jointInWords", joint.code(), joint.title(), joint.jointClass());
    }
}
