package wainbook.process.page.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Words;
import wainbook.process.draft.ItemInWords;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.SheetDraft;
import wainbook.process.draft.Surroundings;
import wainbook.process.sheet.BeyondConcession;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckItem.Dependence;
import wainbook.process.sheet.CheckItem.PartUse;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;

/** The forms of a check sheet: its head, and one item. */
final class SheetForms {

    private static final int MOST_MINUTES = 10_000;
    private static final int MOST_TRIES = 20;
    private static final int MOST_PARTS = 1_000;

    private static final PartForm<SheetDraft, CheckSheet> HEAD = new PartForm<>(
            Group.HEAD,
            draft -> List.of(draft.sheet()),
            (draft, heads) -> new SheetDraft(heads.get(0)),
            sheet -> "head",
            sheet -> Map.of("title", sheet.title(), "stage", sheet.stage()),
            (former, typed) -> new CheckSheet(
                    former.orElseThrow().code(),
                    typed.text("title"),
                    former.orElseThrow().items(),
                    typed.code("stage")),
            (draft, surroundings, typed) ->
                    List.of(Input.line("title"), Input.choice("stage", StageForms.options(surroundings.stages()))),
            PartForm.Keep.ONE);

    private static final PartForm<SheetDraft, CheckItem> ITEM = new PartForm<>(
            Group.ITEM,
            draft -> draft.sheet().items(),
            (draft, items) -> new SheetDraft(new CheckSheet(
                    draft.sheet().code(),
                    draft.sheet().title(),
                    items,
                    draft.sheet().stage())),
            CheckItem::key,
            SheetForms::typed,
            SheetForms::item,
            SheetForms::inputs,
            PartForm.Keep.ORDERED);

    static final List<PartForm<?, ?>> ALL = List.of(HEAD, ITEM);

    private SheetForms() {}

    private static Map<String, String> typed(CheckItem item) {
        var typed = new LinkedHashMap<String, String>();
        typed.put("key", item.key());
        typed.put("title", item.title());
        typed.put("asks", ItemInWords.kind(item.asks()));
        typed.putAll(AskForm.typed(item.asks()));
        typed.put("condition", item.condition().name());
        typed.put("competence", item.competence().orElse(""));
        typed.put("caution", item.caution().orElse(""));
        typed.put("plannedMinutes", "" + item.plannedMinutes());
        typed.put("zone", item.zone().orElse(""));
        typed.put("after", String.join(" ", item.after()));
        typed.put(
                "parts",
                item.parts().stream().map(use -> use.part() + " " + use.count()).collect(Collectors.joining("\n")));
        typed.put(
                "dependsOn",
                item.dependsOn().stream()
                        .map(on -> on.sort().name().toLowerCase(Words.LOCALE) + " " + on.code())
                        .collect(Collectors.joining("\n")));
        typed.put("appliesWhen", item.appliesWhen().orElse(""));
        typed.put("tries", "" + item.tries());
        typed.put("noConcession", item.noConcession().map(Enum::name).orElse(""));
        return typed;
    }

    private static CheckItem item(Optional<CheckItem> former, Typed typed) {
        return new CheckItem(
                typed.code("key"),
                typed.text("title"),
                AskForm.ask(typed),
                typed.one("condition", Condition.class),
                typed.maybeCode("competence"),
                typed.maybe("caution"),
                typed.whole("plannedMinutes", 0, MOST_MINUTES),
                typed.maybe("zone"),
                parts(typed),
                typed.codes("after"),
                dependsOn(typed),
                typed.maybe("appliesWhen"),
                typed.whole("tries", 1, MOST_TRIES),
                typed.maybeOne("noConcession", BeyondConcession.class));
    }

    private static List<PartUse> parts(Typed typed) {
        var uses = new ArrayList<PartUse>();
        for (String line : typed.lines("parts")) {
            String[] words = line.split("\\s+");
            boolean fits = words.length <= 2
                    && words[0].matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")
                    && (words.length < 2 || words[1].matches("[1-9]\\d{0,2}"));
            if (!fits) {
                typed.wrong("parts", "process.fieldParts", line, MOST_PARTS - 1);
                return List.of();
            }
            uses.add(new PartUse(words[0], words.length < 2 ? 1 : Integer.parseInt(words[1])));
        }
        return uses;
    }

    private static List<Dependence> dependsOn(Typed typed) {
        var on = new ArrayList<Dependence>();
        for (String line : typed.lines("dependsOn")) {
            if (!line.matches("(part|item)\\s+[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
                typed.wrong("dependsOn", "process.fieldDependsOn", line);
                return List.of();
            }
            String[] words = line.split("\\s+");
            on.add(new Dependence(Dependence.Sort.valueOf(words[0].toUpperCase(Words.LOCALE)), words[1]));
        }
        return on;
    }

    private static List<Input> inputs(SheetDraft draft, Surroundings surroundings, Map<String, String> typed) {
        var inputs = new ArrayList<Input>(
                List.of(Input.line("key"), Input.line("title"), Input.choice("asks", AskForm.kinds())));
        inputs.addAll(AskForm.inputs(typed.getOrDefault("asks", ""), surroundings));
        inputs.addAll(List.of(
                Input.choice("condition", Input.words(Condition.class, "process.condition.")),
                Input.line("competence"),
                Input.area("caution"),
                Input.whole("plannedMinutes").in("min"),
                Input.line("zone"),
                Input.line("after"),
                Input.area("parts"),
                Input.area("dependsOn"),
                Input.line("appliesWhen"),
                Input.whole("tries"),
                Input.choiceOrNone("noConcession", Input.words(BeyondConcession.class, "process.beyond."))));
        return inputs;
    }
}
