package wainbook.book.telling;

import java.util.Optional;
import wainbook.isolation.IsolationSaying.HandedBack;
import wainbook.isolation.IsolationSaying.LivePermitIssued;
import wainbook.isolation.IsolationSaying.PaperRead;
import wainbook.isolation.IsolationSaying.PermitCancelled;
import wainbook.isolation.IsolationSaying.PermitIssued;
import wainbook.isolation.IsolationSaying.SanctionIssued;
import wainbook.isolation.IsolationSaying.TestEnded;
import wainbook.isolation.IsolationSaying.WorkResumed;
import wainbook.isolation.IsolationSaying.WorkStopped;
import wainbook.isolation.permit.Work;
import wainbook.page.Words;

/** How permits to work, sanctions for test, live-work permits and the work under them are told. */
final class PaperTellings {

    private PaperTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(PermitIssued.class, (said, names) -> Told.of(permit(said, names)));
        tellings.on(
                SanctionIssued.class,
                (said, names) -> Told.of(Words.of(
                                "book.sanctionIssued",
                                said.sanction(),
                                names.person(said.holder()),
                                names.time(said.validUntil()),
                                work(said.work()),
                                said.instrument().code())
                        + IsolationTellings.confirmed(said)));
        tellings.on(
                LivePermitIssued.class,
                (said, names) -> Told.of(Words.of(
                                "book.livePermitIssued",
                                said.permit(),
                                names.person(said.tester()),
                                names.person(said.second()),
                                names.time(said.validUntil()),
                                work(said.work()),
                                said.gloves().code())
                        + IsolationTellings.confirmed(said)));
        tellings.on(PaperRead.class, (said, names) -> Told.of(Words.of("book.paperRead", said.paper())));
        tellings.on(PermitCancelled.class, (said, names) -> Told.of(Words.of("book.permitCancelled", said.permit())));
        tellings.on(
                TestEnded.class,
                (said, names) -> Told.of(Words.of("book.testEnded") + IsolationTellings.confirmed(said)));
        underway(tellings);
    }

    static String note(Optional<String> note) {
        return note.filter(words -> !words.isBlank())
                .map(words -> " " + Words.of("book.note", words))
                .orElse("");
    }

    private static void underway(Tellings tellings) {
        tellings.on(
                WorkStopped.class,
                (said, names) -> Told.of(Words.of(
                                "book.workStopped",
                                Words.of("isolation.stop." + said.cause().name()))
                        + note(said.note())));
        tellings.on(
                WorkResumed.class,
                (said, names) ->
                        Told.of(Words.of("book.workResumed", said.permit(), IsolationTellings.list(said.locksSeen()))
                                + IsolationTellings.confirmed(said)));
        tellings.on(HandedBack.class, (said, names) -> Told.of(handedBack(said)));
    }

    private static String permit(PermitIssued said, Names names) {
        String issued = Words.of(
                "book.permitIssued",
                said.permit(),
                names.person(said.receiver()),
                names.time(said.validUntil()),
                work(said.work()),
                IsolationTellings.list(said.pointsOfWork()));
        String own = said.ownIsolation() ? " " + Words.of("isolating.ownIsolation") : "";
        return issued + own + IsolationTellings.confirmed(said);
    }

    private static String work(Work work) {
        return Words.of("book.paperWork", work.what(), or(work.excluded()), or(work.hazards()));
    }

    private static String or(String words) {
        return words.isBlank() ? "–" : words;
    }

    private static String handedBack(HandedBack said) {
        return Words.of("book.handedBack")
                + " "
                + Words.of(said.complete() ? "book.workComplete" : "book.workNotComplete")
                + " "
                + Words.of(said.clear() ? "book.allClear" : "book.notClear")
                + (said.opened() ? " " + Words.of("book.jointOpened") : "");
    }
}
