package wainbook.book.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.book.print.Block.Fact;
import wainbook.book.print.Cell;
import wainbook.book.print.Chapter;
import wainbook.book.print.Grid;
import wainbook.book.print.Manuscript;
import wainbook.book.print.Row;
import wainbook.ledger.Entry;
import wainbook.order.FactQuestion;
import wainbook.page.Words;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.SoftwareRead;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.words.Wanted;

/** What the vehicle is: donor, facts, weights, what was fitted by serial or lot, software. */
final class VehicleChapter {

    private VehicleChapter() {}

    static Chapter of(Material material) {
        return new Manuscript("vehicle", Words.of("printed.vehicle"))
                .part("order", Words.of("printed.order"))
                .facts(order(material))
                .part("facts", Words.of("printed.facts"))
                .grid(facts(material), Words.of("book.noFacts"))
                .part("specification", Words.of("printed.specification"))
                .facts(SpecificationPart.facts(material))
                .grid(SpecificationPart.predicted(material), Words.of("printed.noSpecification"))
                .part("calibration", Words.of("printed.calibration"))
                .facts(CalibrationPart.facts(material))
                .grid(CalibrationPart.values(material), Words.of("printed.noCalibration"))
                .part("weights", Words.of("printed.weights"))
                .grid(weights(material), Words.of("printed.noWeights"))
                .part("road", Words.of("printed.road"))
                .grid(RoadPart.releases(material), Words.of("printed.noRoadRelease"))
                .grid(RoadPart.drives(material), Words.of("printed.noDrives"))
                .part("handover", Words.of("printed.handover"))
                .facts(HandoverPart.facts(material))
                .grid(HandoverPart.instructions(material), Words.of("printed.noInstruction"))
                .grid(HandoverPart.snags(material), Words.of("printed.noSnags"))
                .grid(ConditionPart.grid(material), Words.of("printed.noPictures"))
                .part("fitted", Words.of("printed.fitted"))
                .grid(fitted(material), Words.of("printed.noneFitted"))
                .part("software", Words.of("printed.software"))
                .grid(software(material), Words.of("printed.noSoftware"))
                .end();
    }

    private static List<Fact> order(Material material) {
        var ordered = material.order().ordered();
        var facts = new ArrayList<Fact>();
        facts.add(Front.fact("printed.operator", ordered.operator(), ""));
        facts.add(Front.fact("printed.kindOfVehicle", material.kind() + " (" + ordered.variant() + ")", ""));
        facts.add(Front.fact("printed.route", ordered.route(), ""));
        facts.add(Front.fact("printed.promised", material.vehicle().promised(), ""));
        material.order().donor().ifPresent(donor -> {
            facts.add(Front.fact("printed.vin", donor.vin(), "fixed"));
            facts.add(Front.fact("printed.registration", donor.registration(), ""));
            facts.add(Front.fact("printed.odometer", Words.of("book.km", donor.odometerKm()), ""));
        });
        String aboard = material.vehicle().aboard();
        if (!aboard.isEmpty()) {
            facts.add(Front.fact("printed.aboard", aboard, ""));
        }
        return facts;
    }

    private static Grid weights(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.item"), 9),
                        Grid.figures(Words.of("printed.value"), 2),
                        Grid.column(Words.of("printed.limit"), 6),
                        Grid.column(Words.of("printed.entry"), 3)),
                Weights.of(material).stream()
                        .map(weight -> Row.of(
                                Cell.of(weight.item()).and(material.names().stage(weight.stage()), "quiet small"),
                                Cell.of(weight.kilogram().toPlainString() + " kg"),
                                Cell.of(weight.limits()),
                                Cell.of(entry(weight.entry()), "fixed")))
                        .toList());
    }

    /** Two facts a row. */
    private static Grid facts(Material material) {
        List<FactQuestion> facts = material.vehicle().facts();
        int rows = (facts.size() + 1) / 2;
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.fact"), 6),
                        Grid.column(Words.of("printed.stated"), 4),
                        Grid.column(Words.of("printed.fact"), 6),
                        Grid.column(Words.of("printed.stated"), 4)),
                IntStream.range(0, rows)
                        .mapToObj(row -> {
                            boolean pair = row + rows < facts.size();
                            return Row.of(
                                    Cell.of(facts.get(row).label(), "quiet"),
                                    Cell.of(facts.get(row).inWords()),
                                    Cell.of(pair ? facts.get(row + rows).label() : "", "quiet"),
                                    Cell.of(pair ? facts.get(row + rows).inWords() : ""));
                        })
                        .toList());
    }

    static String limits(Measured said) {
        return Stream.concat(
                        said.works().stream()
                                .map(limits -> Words.of("station.worksLimit", Wanted.said(limits), said.unit())),
                        said.legal().stream()
                                .map(limits -> Words.of(
                                        "station.legalLimit",
                                        Wanted.said(limits),
                                        said.unit(),
                                        limits.source().orElse(""))))
                .reduce((former, latter) -> former + "; " + latter)
                .orElse("");
    }

    private static Grid fitted(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.part"), 7),
                        Grid.column(Words.of("printed.serialOrLot"), 7),
                        Grid.column(Words.of("printed.sort"), 3),
                        Grid.column(Words.of("printed.entry"), 3)),
                material.vehicle().fitted().stream()
                        .map(part -> Row.of(
                                Cell.of(part.part()),
                                Cell.of(part.number(), "fixed"),
                                Cell.of(Words.of(part.serial() ? "book.serial" : "book.lot")),
                                Cell.of(String.valueOf(part.entry()), "fixed")))
                        .toList());
    }

    private static Grid software(Material material) {
        return new Grid(
                List.of(
                        Grid.column(Words.of("printed.module"), 6),
                        Grid.column(Words.of("printed.version"), 4),
                        Grid.column(Words.of("printed.expected"), 4),
                        Grid.column(Words.of("printed.came"), 3),
                        Grid.column(Words.of("printed.entry"), 3)),
                material.history()
                        .saying(SoftwareRead.class)
                        .map(entry -> {
                            var said = (SoftwareRead) entry.saying();
                            return Row.of(
                                    Cell.of(said.module()),
                                    Cell.of(said.version(), "fixed"),
                                    Cell.of(said.expected(), "fixed"),
                                    Cell.of(Words.of(said.verdict() == Verdict.PASS ? "book.pass" : "book.fail")),
                                    Cell.of(entry(entry), "fixed"));
                        })
                        .toList());
    }

    static String entry(Entry entry) {
        return entry.number() + " · " + entry.hash().substring(0, 8);
    }
}
