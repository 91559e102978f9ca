package wainbook.book.telling;

import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.page.Words;

/** How nonconformities are told. */
final class MatterTellings {

    private MatterTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                NonconformityOpened.class,
                (said, names) -> Told.of(Words.of(
                        "book.nonconformityOpened",
                        said.nonconformity(),
                        Words.of("matter.cause." + said.cause().name()),
                        said.what())));
        tellings.on(
                Disposed.class,
                (said, names) -> Told.of(Words.of(
                        "book.disposed",
                        said.nonconformity(),
                        Words.of("matter.disposition." + said.disposition().name()),
                        said.because())));
    }
}
