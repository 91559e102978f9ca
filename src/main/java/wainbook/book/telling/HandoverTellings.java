package wainbook.book.telling;

import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.HandoverSaying.SetJudged;
import wainbook.handover.Standing;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.document.DocumentLine;
import wainbook.page.Formats;
import wainbook.page.Words;

/** How documents are told. */
final class HandoverTellings {

    private HandoverTellings() {}

    static void addTo(Tellings tellings) {
        RecordTellings.addTo(tellings);
        tellings.on(
                CarbonStated.class,
                (said, names) -> Told.of(
                        Words.of("book.carbonStated", said.statement(), String.valueOf(said.year())),
                        Words.of(
                                "book.carbonSaved",
                                said.saved().lowT().toPlainString(),
                                said.saved().highT().toPlainString(),
                                said.basis().years())));
        tellings.on(
                DocumentNoted.class,
                (said, names) -> Told.of(
                        Words.of("book.documentNoted", said.requirement(), said.document()),
                        DocumentLine.inWords(said)));
        tellings.on(
                Issued.class,
                (said, names) -> Told.of(
                        Words.of("book.issued", said.title(), said.number()),
                        Words.of("book.issuedText", said.revision())));
        tellings.on(
                SetJudged.class,
                (said, names) -> Told.of(Words.of(
                        "book.setJudged",
                        said.set(),
                        said.revision(),
                        Formats.date(said.on()),
                        count(said, Standing.IN_HAND),
                        count(said, Standing.WAIVED),
                        said.documents().stream()
                                .filter(judged -> judged.standing().isOpen())
                                .count())));
    }

    private static long count(SetJudged said, Standing standing) {
        return said.documents().stream()
                .filter(judged -> judged.standing() == standing)
                .count();
    }
}
