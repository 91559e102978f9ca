package wainbook.process.page.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.process.determination.Given;
import wainbook.process.determination.Method;
import wainbook.process.draft.Surroundings;
import wainbook.process.sheet.Ask;

/** A determination as fields; what is given stands in lines like {@code workingV = 756} or {@code isolationOhm = the-item}. */
final class DetermineForm {

    private DetermineForm() {}

    static List<Input> inputs(Surroundings around) {
        return List.of(
                Input.line("quantity"),
                Input.choice("method", Input.words(Method.class, "process.method.")),
                Input.area("given"),
                Input.area("determinedParts"),
                Input.decimal("worksLower"),
                Input.decimal("worksUpper"),
                Input.tick("worksStrict"),
                Input.line("worksSource"),
                Input.choiceOrNone(
                        "instrumentKind",
                        Input.codes(around.known().instrumentKinds().stream()
                                .sorted()
                                .toList())));
    }

    static Ask read(Typed typed) {
        Optional<Method> method = typed.maybe("method").flatMap(DetermineForm::method);
        List<String> parts = typed.lines("determinedParts");
        List<Given> given = given(typed);
        if (method.isEmpty()) {
            typed.wrong("method", "process.fieldChoice");
            return new Ask.Photograph();
        }
        if (method.get().ofParts() == parts.isEmpty()) {
            typed.wrong("determinedParts", "process.fieldPartsOfMethod");
            return new Ask.Photograph();
        }
        String quantity = typed.text("quantity");
        return quantity.isBlank()
                ? new Ask.Photograph()
                : new Ask.Determine(
                        quantity,
                        method.get(),
                        given,
                        parts,
                        AskForm.limits("works", typed),
                        typed.maybeCode("instrumentKind"));
    }

    static Map<String, String> typed(Ask.Determine ask) {
        var typed = new LinkedHashMap<String, String>();
        typed.put("quantity", ask.quantity());
        typed.put("method", ask.method().name());
        typed.put(
                "given",
                ask.given().stream()
                        .map(given -> given.name() + " = "
                                + given.value()
                                        .map(BigDecimal::toPlainString)
                                        .or(given::item)
                                        .orElseThrow())
                        .collect(Collectors.joining("\n")));
        typed.put("determinedParts", String.join("\n", ask.parts()));
        ask.works().ifPresent(limits -> typed.putAll(AskForm.limits("works", limits)));
        typed.put("instrumentKind", ask.instrumentKind().orElse(""));
        return typed;
    }

    private static Optional<Method> method(String name) {
        return List.of(Method.values()).stream()
                .filter(method -> method.name().equals(name))
                .findFirst();
    }

    private static List<Given> given(Typed typed) {
        var all = new ArrayList<Given>();
        for (String line : typed.lines("given")) {
            String[] sides = line.split("=", 2);
            String name = sides[0].strip();
            String said = sides.length == 2 ? sides[1].strip() : "";
            if (!name.matches("[a-z][A-Za-z]{0,59}") || !said.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}")) {
                typed.wrong("given", "process.fieldGiven");
                return List.of();
            }
            boolean figure = said.matches("\\d{1,12}(\\.\\d{1,12})?");
            all.add(new Given(
                    name,
                    figure ? Optional.of(new BigDecimal(said)) : Optional.empty(),
                    figure ? Optional.empty() : Optional.of(said)));
        }
        return all;
    }
}
