package wainbook.setup.taking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wainbook.ledger.Saying;
import wainbook.setup.files.Change;
import wainbook.setup.files.Lines;
import wainbook.works.WorksSaying;

/** What is said of one instrument: registered anew if it is another thing now, else only what happened to it. */
record InstrumentLine(Lines.Instrument line, Change change, LocalDate firstDay) {

    List<Saying> sayings() {
        List<Saying> sayings = new ArrayList<>();
        boolean anew = change.sort() == Change.Sort.ADDED
                || touchesAny("kind", "title", "unit", "lower", "upper", "accuracy_percent");
        boolean calibrated = anew || touchesAny("calibrated_day", "due_day", "certificate");
        if (anew) {
            sayings.add(new WorksSaying.InstrumentRegistered(
                    line.kind(), line.title(), line.unit(), line.lower(), line.upper(), line.accuracyPercent()));
        }
        if (calibrated) {
            line.calibratedDay()
                    .ifPresent(day -> sayings.add(WorksSaying.Calibrated.certified(
                            firstDay.plusDays(day),
                            firstDay.plusDays(line.dueDay().orElseThrow()),
                            line.certificate().orElseThrow())));
        }
        if (calibrated || touchesAny("withdrawn")) {
            line.withdrawn().ifPresent(why -> sayings.add(WorksSaying.InstrumentWithdrawn.because(why)));
        }
        return sayings;
    }

    private boolean touchesAny(String... fields) {
        return Stream.of(fields).anyMatch(change::touches);
    }
}
