package wainbook.book.telling;

import wainbook.book.BookSaying.SetFrozen;
import wainbook.page.Words;

/** How the book tells of itself. */
final class BookTellings {

    private BookTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                SetFrozen.class,
                (said, names) -> Told.of(
                        Words.of("book.setFrozen", said.volume(), said.upTo()),
                        Words.of(
                                "book.setFingerprints",
                                said.set().sha256().substring(0, 16),
                                said.merged().sha256().substring(0, 16))));
    }
}
