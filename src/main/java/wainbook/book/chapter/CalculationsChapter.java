package wainbook.book.chapter;

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
        worked.ifPresent(known -> working(text, known));
    }

    private static List<Fact> facts(Material material, Entry entry, Determined said) {
        var facts = new ArrayList<Fact>();
        facts.add(Front.fact(
                "printed.result",
                DeterminedInWords.figures(said) + " · " + DeterminedInWords.verdict(said)
                        + (voided(material, entry) ? " · " + Words.of("printed.void") : ""),
                voided(material, entry) ? "struck strong" : "strong"));
        List<String> findings = DeterminedInWords.findings(said);
        if (!findings.isEmpty()) {
            facts.add(Front.fact("printed.findings", String.join("; ", findings), ""));
        }
        facts.add(Front.fact("printed.readings", figures(said.readings()), ""));
        facts.add(Front.fact("printed.inputs", figures(said.inputs()), ""));
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

    private static void working(Manuscript text, Worked worked) {
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

    private static Map<String, String> inputs(Determined said) {
        Map<String, String> inputs = new LinkedHashMap<>();
        said.inputs().forEach(figure -> inputs.put(figure.name(), figure.value()));
        return inputs;
    }

    private static String figures(List<Figure> figures) {
        return figures.stream()
                .map(figure -> figure.name() + " = " + figure.value())
                .collect(Collectors.joining("; "));
    }
}
