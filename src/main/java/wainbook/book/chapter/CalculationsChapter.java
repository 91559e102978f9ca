package wainbook.book.chapter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.ledger.Entry;
import wainbook.page.Words;
import wainbook.page.calculation.Calculations;
import wainbook.page.calculation.Worked;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Voided;
import wainbook.station.determination.DeterminedInWords;

/** What was determined from readings, each with its whole working: as the page of the calculation shows it. */
final class CalculationsChapter {

    private CalculationsChapter() {}

    static Chapter of(Material material) {
        var text = new Manuscript("calculations", Words.of("printed.calculations"))
                .text(Words.of("printed.calculationsIntro"));
        List<Entry> all = material.history().saying(Determined.class).toList();
        if (all.isEmpty()) {
            text.quiet(Words.of("printed.noCalculations"));
        }
        all.forEach(entry -> add(text, material, entry, (Determined) entry.saying()));
        return text.end();
    }

    private static void add(Manuscript text, Material material, Entry entry, Determined said) {
        Optional<Worked> worked = material.calculations().worked(said.method().calculation(), inputs(said));
        text.part(String.valueOf(entry.number()), material.names().item(said.about()));
        text.facts(facts(material, entry, said));
        text.grid(
                new Grid(
                        List.of(
                                Grid.column(Words.of("printed.limit"), 15),
                                Grid.column(Words.of("printed.finding"), 5)),
                        said.judgements().stream()
                                .map(judgement -> Row.of(
                                        Cell.of(DeterminedInWords.limit(judgement, said.unit())),
                                        Cell.of(
                                                Words.of("station.verdict." + judgement.finding()),
                                                judgement.finding() == Finding.PASS ? "" : "danger")))
                                .toList()),
                Words.of("printed.noLimits"));
        worked.ifPresent(known -> working(text, said, known));
    }

    private static List<Fact> facts(Material material, Entry entry, Determined said) {
        var facts = new ArrayList<Fact>();
        boolean voided = voided(material, entry);
        facts.add(Front.fact(
                "printed.result",
                DeterminedInWords.figures(said) + " · " + DeterminedInWords.verdict(said),
                voided ? "struck strong" : "strong"));
        if (voided) {
            facts.add(Front.fact("printed.counts", Words.of("printed.void"), "danger"));
        }
        List<String> findings = DeterminedInWords.findings(said);
        if (!findings.isEmpty()) {
            facts.add(Front.fact("printed.findings", String.join("; ", findings), ""));
        }
        facts.add(Front.fact("printed.readings", figures(said, said.readings()), ""));
        facts.add(Front.fact("printed.inputs", figures(said, said.inputs()), ""));
        facts.add(Front.fact(
                "printed.recorded",
                Words.of(
                        "printed.recordedBy",
                        material.formats().moment(entry.moment().at()),
                        entry.moment().who(),
                        material.names().stage(said.about().stage()),
                        VehicleChapter.entry(entry),
                        said.basis().used().map(used -> used.instrument()).orElse("–")),
                ""));
        return facts;
    }

    private static boolean voided(Material material, Entry entry) {
        return material.history()
                .saying(Voided.class)
                .anyMatch(later -> ((Voided) later.saying()).entry().equals(entry.id()));
    }

    private static void working(Manuscript text, Determined said, Worked worked) {
        against(said, worked).ifPresent(text::caution);
        text.grid(
                new Grid(
                        List.of(
                                Grid.column(Words.of("printed.step"), 6),
                                Grid.column(Words.of("printed.formula"), 5),
                                Grid.column(Words.of("printed.figures"), 6),
                                Grid.figures(Words.of("printed.value"), 3)),
                        worked.steps().stream()
                                .map(step -> Row.of(
                                        Cell.of(step.name()),
                                        Cell.of(step.formula(), "fixed"),
                                        Cell.of(step.figures(), "fixed"),
                                        Cell.of(step.text() + " " + step.unit())))
                                .toList()),
                Words.of("printed.noSteps"));
        text.quiet(Words.of(
                "printed.sources",
                worked.sources().stream()
                        .map(source -> source.document() + " " + source.clause() + " (" + source.standing() + ")")
                        .collect(Collectors.joining("; "))));
    }

    /** Where the calculation, worked again from what the entry kept, does not give what the entry says. */
    private static Optional<String> against(Determined said, Worked worked) {
        if (worked.judged().isEmpty() || said.value().isEmpty()) {
            return Optional.empty();
        }
        Worked.Judged judged = worked.judged().get();
        if (differs(judged.text(), said.value().get())) {
            return Optional.of(Words.of(
                    "printed.worksOutOtherwise",
                    judged.text(),
                    said.value().get().toPlainString(),
                    judged.unit()));
        }
        return said.uncertainty()
                .filter(kept -> differs(judged.uncertainty(), kept))
                .map(kept -> Words.of("printed.uncertaintyOfInstrument", kept.toPlainString(), judged.unit()));
    }

    /** Beyond the digits that pages show. */
    private static boolean differs(String shown, BigDecimal kept) {
        double value = kept.doubleValue();
        return Math.abs(Double.parseDouble(shown) - value) > 1e-4 * Math.abs(value) + 1e-12;
    }

    /** What is given in several is one input, as a form takes it. */
    private static Map<String, String> inputs(Determined said) {
        return joined(said.inputs(), " ");
    }

    private static Map<String, String> joined(List<Figure> figures, String between) {
        Map<String, String> inputs = new LinkedHashMap<>();
        figures.forEach(
                figure -> inputs.merge(figure.name(), figure.value(), (former, latter) -> former + between + latter));
        return inputs;
    }

    private static String figures(Determined said, List<Figure> figures) {
        return joined(figures, ", ").entrySet().stream()
                .map(figure -> Words.of(
                        "printed.figure",
                        Calculations.inputInWords(said.method().calculation(), figure.getKey()),
                        figure.getValue()))
                .collect(Collectors.joining("; "));
    }
}
