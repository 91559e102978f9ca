package wainbook.setup.files;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import wainbook.process.Station;

/**
 * What must hold of the works' time: a zone that is known, and a shift, since papers of an isolation run out with it.
 *
 * @param stations places where a shift may work
 */
record DayChecks(Located<Lines.Works> works, List<Station> stations, List<Fault> faults) {

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
            places(shifts.get(i), "/shifts/" + i + "/places/");
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

    private void places(Lines.ShiftLine shift, String pointer) {
        for (int i = 0; i < shift.places().size(); i++) {
            String place = shift.places().get(i);
            if (stations.stream().map(Station::code).noneMatch(place::equals)) {
                faults.add(Fault.of(works.at(pointer + i).unnamed(), "unknownCode", place, "a place of stations.csv"));
            }
        }
    }
}
