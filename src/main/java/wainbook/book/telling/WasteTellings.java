package wainbook.book.telling;

import wainbook.page.Words;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.EngineMadeUnusable;
import wainbook.waste.WasteSaying.LeftAsPart;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.PlacingVoided;
import wainbook.waste.WasteSaying.Removed;
import wainbook.waste.WasteSaying.Tested;

/** How things that were taken out of a vehicle are told. */
final class WasteTellings {

    private WasteTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                Removed.class,
                (said, names) -> Told.of(
                        Words.of("book.wasteRemoved", said.what(), said.code()),
                        said.massKg().toPlainString() + " kg"));
        tellings.on(
                Decided.class,
                (said, names) -> Told.of(
                        Words.of(
                                "book.wasteDecided",
                                said.thing(),
                                Words.of("process.fate." + said.fate().name())),
                        said.party().orElse(said.why())));
        tellings.on(
                Tested.class,
                (said, names) -> Told.of(
                        Words.of("book.wasteTested", said.thing()),
                        Words.of(said.fit() ? "book.wasteFit" : "book.wasteUnfit") + ", " + said.found()));
        tellings.on(LeftAsPart.class, (said, names) -> Told.of(Words.of("book.wasteLeft", said.thing()), said.to()));
        tellings.on(
                Placed.class,
                (said, names) -> Told.of(
                        Words.of("book.wastePlaced", said.what(), said.container()),
                        said.massKg().toPlainString() + " kg"));
        tellings.on(
                PlacingVoided.class,
                (said, names) -> Told.of(Words.of("book.wasteVoided", said.thing(), said.container()), said.reason()));
        tellings.on(
                EngineMadeUnusable.class,
                (said, names) -> Told.of(Words.of("book.wasteEngine"), said.serial() + ", " + said.method()));
    }
}
