package wainbook.station.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.station.determination.Determining;

/**
 * A blank that is filled in for a check item, on paper and when it is typed in. Its name is that of the station page’s
 * field, so that both are read alike.
 *
 * @param options what may be chosen; empty where something is written
 */
public record PaperBlank(String name, String label, String unit, List<Option> options) {

    public PaperBlank {
        options = List.copyOf(options);
    }

    public boolean choice() {
        return !options.isEmpty();
    }

    /** Empty where nothing has to be written but who did it, when. */
    static List<PaperBlank> of(Ask ask, Optional<Joint> joint) {
        if (ask instanceof Ask.Measure measure) {
            return List.of(written("reading", measure.quantity(), measure.unit()));
        }
        if (ask instanceof Ask.Quantity quantity) {
            return List.of(written("quantity", Words.of("station.quantity"), quantity.unit()));
        }
        if (ask instanceof Ask.Table table) {
            return cells(table);
        }
        if (ask instanceof Ask.Determine determine) {
            return determine.readings().stream()
                    .map(reading -> new PaperBlank(
                            reading.name(),
                            Determining.label(determine, reading),
                            reading.unit(),
                            reading.options().stream()
                                    .map(option -> new Option(
                                            option,
                                            Words.find("station.reading.option." + option)
                                                    .orElse(option)))
                                    .toList()))
                    .toList();
        }
        if (ask instanceof Ask.Serial serial) {
            return List.of(written("serial", Words.of("station.serial", serial.part()), ""));
        }
        if (ask instanceof Ask.Lot lot) {
            return List.of(written("lot", Words.of("station.lot", lot.part()), ""));
        }
        if (ask instanceof Ask.Choice choice) {
            return List.of(new PaperBlank(
                    "choice",
                    Words.of("station.finding"),
                    "",
                    choice.options().stream()
                            .map(option -> new Option(option.text(), option.text()))
                            .toList()));
        }
        if (ask instanceof Ask.Text) {
            return List.of(written("words", Words.of("station.words"), ""));
        }
        if (ask instanceof Ask.Software software) {
            return List.of(written("version", Words.of("station.version", software.module()), ""));
        }
        return joint.map(known -> bolts(ask, known)).orElse(List.of());
    }

    private static List<PaperBlank> bolts(Ask ask, Joint joint) {
        if (ask instanceof Ask.Recheck && CheckWay.of(joint) == CheckWay.BY_MARK) {
            List<Option> findings = Arrays.stream(CheckWay.Found.values())
                    .map(found -> new Option(found.name(), Words.of("station.found." + found.name())))
                    .toList();
            return Stream.concat(
                            Stream.of(written("reading", Words.of("station.paperCheckedAt"), "N·m")),
                            numbers(joint)
                                    .mapToObj(bolt -> new PaperBlank(
                                            "check" + bolt, Words.of("station.paperBolt", bolt), "", findings)))
                    .toList();
        }
        if (!(ask instanceof Ask.Tighten) && !(ask instanceof Ask.Recheck)) {
            return List.of();
        }
        boolean angled = ask instanceof Ask.Tighten && joint.angle().isPresent();
        var blanks = new ArrayList<PaperBlank>();
        numbers(joint).forEach(bolt -> {
            blanks.add(written("bolt" + bolt, Words.of("station.paperBolt", bolt), "N·m"));
            if (angled) {
                blanks.add(written("angle" + bolt, Words.of("station.paperAngle", bolt), "°"));
            }
        });
        return blanks;
    }

    private static IntStream numbers(Joint joint) {
        return IntStream.rangeClosed(1, joint.bolts());
    }

    private static List<PaperBlank> cells(Ask.Table table) {
        var blanks = new ArrayList<PaperBlank>();
        for (String row : table.rows()) {
            for (Ask.Table.Column column : table.columns()) {
                blanks.add(written(
                        "cell" + (blanks.size() + 1), Words.of("station.cell", row, column.title()), column.unit()));
            }
        }
        return blanks;
    }

    private static PaperBlank written(String name, String label, String unit) {
        return new PaperBlank(name, label, unit, List.of());
    }
}
