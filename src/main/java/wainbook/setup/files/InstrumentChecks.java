package wainbook.setup.files;

import java.util.List;

/** What must hold between instruments and their kinds; hands on the kinds. */
record InstrumentChecks(
        List<Located<Lines.InstrumentKind>> kinds, List<Located<Lines.Instrument>> instruments, List<Fault> faults) {

    Codes run() {
        Codes known = Codes.of(
                kinds, Lines.InstrumentKind::code, "code", "instrument-kinds.csv", faults, "kind of instrument");
        Codes.of(instruments, Lines.Instrument::code, "code", "instruments.csv", faults, "instrument");
        var form = new Form(faults);
        for (Located<Lines.InstrumentKind> kind : kinds) {
            form.code(kind.value().code(), kind.at("code"));
        }
        for (Located<Lines.Instrument> located : instruments) {
            Lines.Instrument instrument = located.value();
            form.code(instrument.code(), located.at("code"));
            form.title(instrument.title(), located.at("title"));
            known.require(instrument.kind(), located.at("kind"));
            if (instrument.lower().compareTo(instrument.upper()) >= 0) {
                faults.add(Fault.of(
                        located.at("upper"),
                        "rangeCrossed",
                        instrument.upper().toPlainString(),
                        "more than " + instrument.lower().toPlainString()));
            }
            calibration(located);
        }
        return known;
    }

    /** An instrument that was never calibrated has neither day and no certificate. */
    private void calibration(Located<Lines.Instrument> located) {
        Lines.Instrument instrument = located.value();
        instrument.calibratedDay().ifPresent(day -> new Form(faults).day(day, located.at("calibrated_day")));
        instrument.dueDay().ifPresent(day -> new Form(faults).day(day, located.at("due_day")));
        if (instrument.calibratedDay().isPresent() != instrument.dueDay().isPresent()
                || instrument.calibratedDay().isPresent()
                        != instrument.certificate().isPresent()) {
            faults.add(Fault.of(
                    located.at("calibrated_day"),
                    "fieldMissing",
                    "a part of a calibration",
                    "calibrated_day, due_day and certificate, or none of them"));
        } else if (instrument.calibratedDay().isPresent()
                && instrument.calibratedDay().get() > instrument.dueDay().orElseThrow()) {
            faults.add(Fault.of(
                    located.at("due_day"),
                    "endsBeforeItBegins",
                    String.valueOf(instrument.dueDay().get()),
                    instrument.calibratedDay().get() + " or later"));
        }
    }
}
