package wainbook.book.telling;

import wainbook.page.Words;
import wainbook.safety.SafetySaying.StopTold;
import wainbook.safety.SafetySaying.WorkStopped;

/** How safety stops are told. */
final class SafetyTellings {

    private SafetyTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                WorkStopped.class,
                (said, names) -> Told.of(Words.of("book.safetyStop", said.stop())
                        + said.station()
                                .map(code -> " " + names.place(code) + ".")
                                .orElse("")
                        + said.words().map(text -> " " + text).orElse("")));
        tellings.on(
                StopTold.class, (said, names) -> Told.of(Words.of("book.safetyStopTold", said.stop(), said.words())));
    }
}
