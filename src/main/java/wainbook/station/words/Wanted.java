package wainbook.station.words;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.joint.RecheckInWords;

/** What a check item wants, in one line. The limits of the works and of the law are said apart. */
public final class Wanted {

    private Wanted() {}

    public static Optional<String> of(Ask ask, Optional<Joint> joint) {
        if (ask instanceof Ask.Measure measure) {
            return Optional.of(Stream.of(
                            measure.works().map(limits -> Words.of("station.worksLimit", said(limits), measure.unit())),
                            measure.legal()
                                    .map(limits -> Words.of(
                                            "station.legalLimit",
                                            said(limits),
                                            measure.unit(),
                                            limits.source().orElse("–"))))
                    .flatMap(Optional::stream)
                    .collect(Collectors.joining(" · ")));
        }
        if (ask instanceof Ask.Tighten) {
            return joint.map(known -> Words.of(
                    known.angle().isPresent() ? "station.torqueAndAngle" : "station.torque",
                    known.torque().targetNm().toPlainString(),
                    known.torque().limitsNm().lower().toPlainString(),
                    known.torque().limitsNm().upper().toPlainString(),
                    known.jointClass().name(),
                    known.angle()
                            .map(angle -> angle.degrees().lower().toPlainString())
                            .orElse(""),
                    known.angle()
                            .map(angle -> angle.degrees().upper().toPlainString())
                            .orElse("")));
        }
        if (ask instanceof Ask.Recheck) {
            return joint.map(RecheckInWords::wanted);
        }
        if (ask instanceof Ask.Determine determine) {
            return Optional.of(DeterminedInWords.wanted(determine));
        }
        if (ask instanceof Ask.Quantity quantity) {
            return quantity.expected()
                    .map(expected -> Words.of("station.expected", expected.toPlainString(), quantity.unit()));
        }
        if (ask instanceof Ask.Software software) {
            return Optional.of(Words.of("station.expectedVersion", software.module(), software.version()));
        }
        if (ask instanceof Ask.Wait wait) {
            return Optional.of(Words.of("station.waitMinutes", wait.minutes()));
        }
        return ask instanceof Ask.Text text ? text.prompt() : Optional.empty();
    }

    public static String said(Limits limits) {
        String key = limits.lower().isEmpty()
                ? limits.strict() ? "station.below" : "station.atMost"
                : limits.upper().isEmpty() ? "station.atLeast" : "station.between";
        return Words.of(
                key,
                limits.lower().map(java.math.BigDecimal::toPlainString).orElse(""),
                limits.upper().map(java.math.BigDecimal::toPlainString).orElse(""));
    }
}
