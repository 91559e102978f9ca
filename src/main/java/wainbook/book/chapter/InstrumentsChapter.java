package wainbook.book.chapter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.book.chapter.Uses.Use;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.Instrument;

/** What was measured with: the calibration at each use, the certificates, and whether it was withdrawn later. */
final class InstrumentsChapter {

    private InstrumentsChapter() {}

    static Chapter of(Material material) {
        Map<String, List<Use>> byCode = Uses.of(material.history()).stream()
                .collect(Collectors.groupingBy(Use::instrument, LinkedHashMap::new, Collectors.toList()));
        return new Manuscript("instruments", Words.of("printed.instruments"))
                .text(Words.of("printed.instrumentsIntro"))
                .grid(
                        new Grid(
                                List.of(
                                        Grid.column(Words.of("printed.instrument"), 6),
                                        Grid.column(Words.of("printed.used"), 6),
                                        Grid.column(Words.of("printed.certificates"), 8)),
                                byCode.entrySet().stream()
                                        .map(uses -> row(material, uses.getKey(), uses.getValue()))
                                        .toList()),
                        Words.of("printed.noInstruments"))
                .end();
    }

    private static Row row(Material material, String code, List<Use> uses) {
        History history = material.instruments().get(code);
        Optional<Instrument> known = Instrument.of(history);
        return Row.of(
                Cell.of(code, "strong").and(known.map(Instrument::title).orElse(""), "quiet small"),
                used(material, uses),
                certificates(material, history, uses));
    }

    private static Cell used(Material material, List<Use> uses) {
        Cell cell = Cell.of(Words.of(
                "printed.usedTimes",
                uses.size(),
                material.formats().moment(uses.get(0).entry().moment().at()),
                material.formats()
                        .moment(uses.get(uses.size() - 1).entry().moment().at())));
        for (LocalDate due : uses.stream()
                .flatMap(use -> use.due().stream())
                .distinct()
                .sorted()
                .toList()) {
            cell = cell.and(Words.of("printed.dueThen", Formats.date(due)), "quiet small");
        }
        for (String past : past(material, uses)) {
            cell = cell.and(past, "danger");
        }
        return cell;
    }

    /** Uses after the last day of the calibration that the entry kept. */
    private static List<String> past(Material material, List<Use> uses) {
        var past = new ArrayList<String>();
        for (Use use : uses) {
            LocalDate day = LocalDate.ofInstant(
                    use.entry().moment().at(), material.formats().zone());
            boolean late = use.due().filter(day::isAfter).isPresent()
                    || use.validUntil()
                            .filter(end -> !use.entry().moment().at().isBefore(end))
                            .isPresent();
            if (late) {
                past.add(Words.of("printed.pastDue", use.entry().number()));
            }
        }
        return past;
    }

    private static Cell certificates(Material material, History history, List<Use> uses) {
        LocalDate first = LocalDate.ofInstant(
                uses.get(0).entry().moment().at(), material.formats().zone());
        List<Calibrated> all = Calibrations.of(history).byDay().stream()
                .map(Calibrations::said)
                .toList();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            boolean replaced = i + 1 < all.size() && !all.get(i + 1).on().isAfter(first);
            if (!replaced) {
                lines.add(certificate(all.get(i)));
            }
        }
        Cell cell = Cell.of(lines.isEmpty() ? Words.of("printed.noCertificate") : lines.get(0));
        for (String line : lines.stream().skip(1).toList()) {
            cell = cell.and(line, "");
        }
        for (Entry withdrawn : history.saying(InstrumentWithdrawn.class).toList()) {
            cell = cell.and(
                    Words.of(
                            "printed.withdrawn",
                            material.formats().moment(withdrawn.moment().at()),
                            ((InstrumentWithdrawn) withdrawn.saying()).reason()),
                    "danger");
        }
        return cell;
    }

    private static String certificate(Calibrated said) {
        String plain = Words.of(
                "printed.certificate",
                said.certificate(),
                Formats.date(said.on()),
                said.due().map(Formats::date).orElse("–"));
        String by = said.laboratory()
                .map(laboratory -> Words.of("printed.byLaboratory", laboratory))
                .orElse("");
        return plain
                + by
                + (said.left().isEmpty()
                        ? ""
                        : Words.of(
                                "printed.points",
                                said.asFound().size(),
                                said.left().size()));
    }
}
