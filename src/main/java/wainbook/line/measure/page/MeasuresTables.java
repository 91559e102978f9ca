package wainbook.line.measure.page;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wainbook.engineering.flow.status.Doing;

/** The same for a spreadsheet: plain figures, stations by their codes. */
record MeasuresTables(MeasuresView view) {

    List<List<String>> figures() {
        return view.figures().stream()
                .map(one -> List.of(
                        one.name(), one.plain(), one.unit(), one.value(), one.formula(), one.inputs(), one.source()))
                .toList();
    }

    List<List<String>> stations() {
        return view.stations().stream()
                .map(one -> Stream.of(
                                Stream.of(one.station().code(), one.stage().code()),
                                Arrays.stream(Doing.values()).map(doing -> Figures.figure(one.minutes(doing), 3)),
                                Stream.of(Figures.figure(one.soleMinutes(), 3)))
                        .flatMap(cells -> cells)
                        .toList())
                .toList();
    }

    List<List<String>> lost() {
        return view.found().lost().stream()
                .map(lost -> List.of(
                        lost.station().map(station -> station.code()).orElse(""),
                        lost.doing().name(),
                        view.cause(lost),
                        Figures.figure(lost.minutes(), 3),
                        Figures.figure(lost.upTo(), 4)))
                .toList();
    }

    List<List<String>> calls() {
        return view.found().calls().stream()
                .map(one -> List.of(
                        one.help().name(),
                        String.valueOf(one.calls()),
                        String.valueOf(one.stoodStill()),
                        plain(one.answerMedian()),
                        plain(one.answerMost()),
                        plain(one.settleMedian()),
                        plain(one.settleMost())))
                .toList();
    }

    private static String plain(OptionalDouble value) {
        return value.isPresent() ? Figures.figure(value.getAsDouble(), 1) : "";
    }
}
