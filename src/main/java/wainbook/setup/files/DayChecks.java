package wainbook.setup.files;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;

/** What must hold of the works' time: a zone that is known, and a shift, since papers of an isolation run out with it. */
record DayChecks(Located<Lines.Works> works, List<Fault> faults) {

    void run() {
        try {
            ZoneId.of(works.value().zone());
        } catch (DateTimeException unknown) {
            faults.add(
                    Fault.of(works.at("/zone"), "unknownCode", works.value().zone(), "a zone such as Europe/London"));
        }
        List<Lines.ShiftLine> shifts = works.value().shifts();
        if (shifts.isEmpty()) {
            faults.add(Fault.of(works.at("/shifts"), "unknownCode", "–", "at least one shift"));
        }
        for (int i = 0; i < shifts.size(); i++) {
            new Located<>(shifts.get(i), works.at("/shifts/" + i).unnamed()).turned(Lines.ShiftLine::shift, faults);
        }
        List<Lines.BreakLine> breaks = works.value().breaks();
        for (int i = 0; i < breaks.size(); i++) {
            new Located<>(breaks.get(i), works.at("/breaks/" + i).unnamed()).turned(Lines.BreakLine::pause, faults);
        }
        List<String> holidays = works.value().holidays();
        for (int i = 0; i < holidays.size(); i++) {
            new Located<>(holidays.get(i), works.at("/holidays/" + i).unnamed()).turned(Lines::day, faults);
        }
    }
}
