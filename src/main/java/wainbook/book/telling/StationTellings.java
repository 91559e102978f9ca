package wainbook.book.telling;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.page.Words;
import wainbook.station.StationSaying.Attached;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Chosen;
import wainbook.station.StationSaying.Confirmed;
import wainbook.station.StationSaying.Counted;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.GivenBack;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.StationSaying.HelpAnswered;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.StationSaying.HelpResolved;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Noted;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.SoftwareRead;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.StationSaying.Taken;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.StationSaying.Waited;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.help.HelpCall;
import wainbook.station.joint.RecheckInWords;
import wainbook.station.serial.BroughtSaying.PartBrought;
import wainbook.station.serial.BroughtSaying.PartTakenOff;

/** How work at the vehicle is told. */
final class StationTellings {

    private StationTellings() {}

    static void addTo(Tellings tellings) {
        results(tellings);
        handedOn(tellings);
        help(tellings);
        tellings.on(
                WaitBegun.class,
                (said, names) -> Told.of(names.item(said.about()), Words.of("book.waitBegun", said.minutes())));
        tellings.on(
                Observed.class,
                (said, names) ->
                        Told.of(Words.of("book.observed", names.item(said.about())), figures(said.readings(), "")));
        tellings.on(
                TakenFromPaper.class,
                (said, names) -> Told.of(
                        Words.of("book.takenFromPaper", names.item(said.about()), said.form()),
                        Grounds.fromPaper(said, names)));
        tellings.on(Voided.class, (said, names) -> Told.of(Words.of("book.voided", said.reason())));
        tellings.on(GivenBack.class, (said, names) -> Told.of(Words.of("book.givenBack", said.item())));
        tellings.on(Taken.class, (said, names) -> Told.of(Words.of("book.taken", said.item())));
        tellings.on(
                ReSequenced.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.reSequenced",
                                names.item(said.about()),
                                names.stage(said.toStage()),
                                said.reason()),
                        said.bars().stream()
                                .map(bar -> Words.of("book.bar." + bar.name()))
                                .collect(Collectors.joining(", "))));
        tellings.on(
                CarriedOver.class,
                (said, names) -> Told.of(Words.of(
                        "book.carriedOver",
                        names.item(said.about()),
                        names.stage(said.toStage()),
                        names.person(said.owner()),
                        said.reason())));
    }

    private static void handedOn(Tellings tellings) {
        tellings.on(
                HandedOn.class,
                (said, names) ->
                        Told.of(Words.of("book.handedOn", names.item(said.about()), said.byKm(), said.reason())));
    }

    private static void help(Tellings tellings) {
        tellings.on(
                HelpCalled.class,
                (said, names) -> Told.of(
                        said.words()
                                .map(words ->
                                        Words.of("book.helpCalledFor", said.call(), HelpCall.word(said.help()), words))
                                .orElseGet(() -> Words.of("book.helpCalled", said.call(), HelpCall.word(said.help()))),
                        said.workStands() ? Words.of("book.helpStands") : ""));
        tellings.on(HelpAnswered.class, (said, names) -> Told.of(Words.of("book.helpAnswered", said.call())));
        tellings.on(
                HelpResolved.class,
                (said, names) -> Told.of(said.words()
                        .map(words -> Words.of("book.helpResolvedWith", said.call(), words))
                        .orElseGet(() -> Words.of("book.helpResolved", said.call()))));
    }

    private static void results(Tellings tellings) {
        tellings.on(Confirmed.class, (said, names) -> judged(said, names, ""));
        tellings.on(
                Measured.class,
                (said, names) -> judged(said, names, said.reading().toPlainString() + " " + said.unit()));
        tellings.on(Tabled.class, (said, names) -> judged(said, names, figures(said.cells(), "")));
        tellings.on(
                Determined.class,
                (said, names) -> judged(
                        said,
                        names,
                        Stream.concat(
                                        Stream.of(DeterminedInWords.figures(said)),
                                        DeterminedInWords.findings(said).stream())
                                .collect(Collectors.joining("; "))));
        tellings.on(Rechecked.class, (said, names) -> judged(said, names, RecheckInWords.figures(said)));
        tellings.on(Tightened.class, (said, names) -> judged(said, names, tightened(said)));
        tellings.on(SerialRead.class, (said, names) -> judged(said, names, said.serial()));
        tellings.on(
                PartBrought.class, (said, names) -> Told.of(Words.of("book.partBrought", said.part(), said.serial())));
        tellings.on(
                PartTakenOff.class,
                (said, names) -> Told.of(Words.of("book.partTakenOff", said.part(), said.serial()), said.reason()));
        tellings.on(LotUsed.class, (said, names) -> judged(said, names, said.lot()));
        tellings.on(
                Counted.class,
                (said, names) -> judged(said, names, said.quantity().toPlainString() + " " + said.unit()));
        tellings.on(Chosen.class, (said, names) -> judged(said, names, said.choice()));
        tellings.on(
                Attended.class,
                (said, names) -> judged(
                        said,
                        names,
                        Words.of("station.lineAttended", said.choice(), said.place(), names.person(said.second()))));
        tellings.on(Noted.class, (said, names) -> judged(said, names, said.words()));
        tellings.on(SoftwareRead.class, (said, names) -> judged(said, names, said.module() + " " + said.version()));
        tellings.on(
                Attached.class,
                (said, names) -> judged(
                        said,
                        names,
                        said.file().mediaType() + " " + said.file().sha256().substring(0, 8)));
        tellings.on(Waited.class, (said, names) -> judged(said, names, Words.of("page.minutes", said.minutes())));
    }

    private static Told judged(Result said, Names names, String value) {
        return Told.judged(names.item(said.about()), value, said.verdict() == Verdict.PASS);
    }

    private static String tightened(Tightened said) {
        String torques = figures(said.boltsNm(), "Nm");
        return said.anglesDeg().isEmpty() ? torques : torques + "; " + figures(said.anglesDeg(), "°");
    }

    private static String figures(List<BigDecimal> figures, String unit) {
        String all = figures.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(", "));
        return unit.isEmpty() || all.isEmpty() ? all : all + " " + unit;
    }
}
