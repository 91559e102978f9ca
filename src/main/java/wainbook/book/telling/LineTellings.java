package wainbook.book.telling;

import wainbook.line.LineSaying.AppointmentAttended;
import wainbook.line.LineSaying.AppointmentBooked;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.LineSaying.PartCame;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.LineSaying.RoadReleaseEnded;
import wainbook.line.LineSaying.RoadReleased;
import wainbook.page.Formats;
import wainbook.page.Words;

/** How parts that are awaited and appointments after the line are told. */
final class LineTellings {

    private LineTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                AppointmentBooked.class,
                (said, names) ->
                        Told.of(Words.of("book.appointmentBooked", said.appointment(), names.time(said.on()))));
        tellings.on(
                AppointmentAttended.class,
                (said, names) -> Told.of(
                        Words.of(
                                said.passed() ? "book.appointmentPassed" : "book.appointmentFailed",
                                said.appointment()),
                        said.remark()));
        tellings.on(
                PartAwaited.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.partAwaited",
                                said.awaited(),
                                names.stage(said.stage()),
                                Formats.day(said.expectedOn())),
                        said.part().map(code -> said.what() + ", " + code).orElse(said.what())));
        tellings.on(
                RoadReleased.class,
                (said, names) -> Told.of(
                        Words.of("book.roadReleased", said.release(), said.driver(), said.plates()),
                        Words.of("book.roadInsured", said.insurance())));
        tellings.on(
                RoadReleaseEnded.class,
                (said, names) -> Told.of(Words.of("book.roadReleaseEnded", said.release()), said.reason()));
        tellings.on(
                RoadDriven.class,
                (said, names) -> Told.of(
                        Words.of(said.fit() ? "book.roadDriven" : "book.roadDrivenUnfit", said.km(), said.loadKg()),
                        said.defects().isBlank() ? said.route() : said.route() + ". " + said.defects()));
        tellings.on(PartCame.class, (said, names) -> Told.of(Words.of("book.partCame", said.awaited()), said.remark()));
    }
}
