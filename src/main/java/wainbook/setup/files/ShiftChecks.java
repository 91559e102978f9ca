package wainbook.setup.files;

import java.util.List;

/** What must hold of the works' shifts: papers of an isolation run out with the shift, so there is at least one. */
record ShiftChecks(Located<Lines.Works> works, List<Fault> faults) {

    void run() {
        List<Lines.ShiftLine> shifts = works.value().shifts();
        if (shifts.isEmpty()) {
            faults.add(Fault.of(works.place().field("shifts"), "unknownCode", "–", "at least one shift"));
        }
        for (Lines.ShiftLine shift : shifts) {
            new Located<>(shift, works.place().field("shifts")).turned(Lines.ShiftLine::shift, faults);
        }
    }
}
