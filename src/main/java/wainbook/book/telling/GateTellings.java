package wainbook.book.telling;

import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.page.Words;

/** How what happened at a gate is told. */
final class GateTellings {

    private GateTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                SignedOff.class,
                (said, names) -> Told.of(
                        Words.of("book.signedOff", names.stage(said.stage()), said.sheet(), said.revision()),
                        said.fingerprint().substring(0, 8)));
        tellings.on(
                Refused.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.refused",
                                names.stage(said.stage()),
                                said.reason(),
                                said.items().isEmpty() ? "–" : String.join(", ", said.items())),
                        said.fingerprint().substring(0, 8)));
    }
}
