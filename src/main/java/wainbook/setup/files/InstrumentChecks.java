package wainbook.setup.files;

import java.util.List;

/** What must hold between instruments and their kinds; hands on the kinds. */
record InstrumentChecks(
        List<Located<Lines.InstrumentKind>> kinds, List<Located<Lines.Instrument>> instruments, List<Fault> faults) {

    Codes run() {
        Codes known = Codes.of(kinds, Lines.InstrumentKind::code, "instrument-kinds.csv", faults, "kind of instrument");
        Codes.of(instruments, Lines.Instrument::code, "instruments.csv", faults, "instrument");
        for (Located<Lines.Instrument> located : instruments) {
            Lines.Instrument instrument = located.value();
            known.require(instrument.kind(), located.place().field("kind"));
            if (instrument.lower().compareTo(instrument.upper()) >= 0) {
                faults.add(Fault.of(
                        located.place().field("upper"),
                        "rangeCrossed",
                        instrument.upper().toPlainString(),
                        "more than " + instrument.lower().toPlainString()));
            }
            if (instrument.calibratedDay() > instrument.dueDay()) {
                faults.add(Fault.of(
                        located.place().field("due_day"),
                        "endsBeforeItBegins",
                        String.valueOf(instrument.dueDay()),
                        instrument.calibratedDay() + " or later"));
            }
        }
        return known;
    }
}
