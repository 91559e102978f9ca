package wainbook.book.telling;

import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Words;
import wainbook.permit.PermitSaying;
import wainbook.permit.PermitSaying.PermitClosed;
import wainbook.permit.PermitSaying.PermitHandedBack;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.PermitReceived;
import wainbook.permit.PermitSaying.WorkStopped;

/** How permits besides those on high voltage are told. */
final class PermitTellings {

    private PermitTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                PermitIssued.class,
                (said, names) -> Told.of(Words.of(
                        "book.workPermitIssued",
                        said.permit(),
                        Words.of("permit.sort." + said.sort().name()),
                        said.work(),
                        names.person(said.receiver()),
                        names.time(said.validUntil()))));
        tellings.on(PermitReceived.class, (said, names) -> Told.of(Words.of("book.workPermitReceived", said.permit())));
        tellings.on(
                WorkStopped.class,
                (said, names) -> Told.of(Words.of("book.workPermitStopped", said.permit()) + words(said.words())));
        tellings.on(
                PermitHandedBack.class,
                (said, names) -> Told.of(Words.of("book.workPermitHandedBack", said.permit()) + words(said.words())));
        tellings.on(
                PermitClosed.class,
                (said, names) -> Told.of(Words.of("book.workPermitClosed", said.permit()) + words(said.words())));
        tellings.on(
                PermitSaying.OnPaper.class,
                (said, names) -> Told.of(Words.of(
                                said.written().open() ? "book.workPermitOnPaperOpen" : "book.workPermitOnPaper",
                                said.form(),
                                Words.of("permit.sort." + said.written().sort().name()),
                                said.written().work(),
                                names.person(said.written().issuer()),
                                names.person(said.written().receiver()),
                                names.time(said.written().issuedAt()))
                        + " "
                        + Words.of(
                                "book.writtenOver", names.person(said.transcribedBy()), names.person(said.comparedBy()))
                        + notKept(said)));
    }

    private static String notKept(PermitSaying.OnPaper said) {
        return said.remarks().isEmpty()
                ? ""
                : " " + said.remarks().stream().map(Words::of).collect(Collectors.joining(" "));
    }

    private static String words(Optional<String> said) {
        return said.map(text -> " " + text).orElse("");
    }
}
