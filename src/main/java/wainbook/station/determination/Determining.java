package wainbook.station.determination;

import java.util.Optional;
import wainbook.engineering.Refusal;
import wainbook.page.Words;
import wainbook.process.determination.ToRead;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.station.determination.method.Bond;
import wainbook.station.determination.method.ByTester;
import wainbook.station.determination.method.ByVoltmeter;
import wainbook.station.determination.method.MonitorTest;
import wainbook.station.determination.method.OfPacks;
import wainbook.station.determination.method.OfParts;
import wainbook.station.determination.method.Timed;

/** Determines a quantity in the way that its item asks for. One way in, for the page, the API and the rehearsal. */
public final class Determining {

    private Determining() {}

    public static Determination of(Ask.Determine ask, Figures in) {
        for (ToRead reading : ask.readings()) {
            if (reading.must() && !reading.later() && !in.has(reading.name())) {
                return Determination.not(reading.name(), "determineMissing", label(ask, reading));
            }
        }
        Optional<Limits> works = ask.works();
        return switch (ask.method()) {
            case ISOLATION_VOLTMETER -> new ByVoltmeter(in, works).determine();
            case ISOLATION_DIRECT -> new ByTester(in, works).determine();
            case BONDING -> new Bond(in, works).determine();
            case PRECHARGE -> Timed.precharge(in, works);
            case DISCHARGE -> Timed.discharge(in, works);
            case MONITOR_TEST -> new MonitorTest(in).determine();
            case ISOLATION_COMBINED -> OfParts.insulation(in, ask.parts(), works);
            case Y_CAPACITORS -> OfParts.capacitors(in, ask.parts(), works);
            case PACK_VOLTAGES -> new OfPacks(in, ask.parts()).determine();
        };
    }

    /** What a field is called; a part's by the part. */
    public static String label(Ask.Determine ask, ToRead reading) {
        if (reading.name().matches("part\\d+")) {
            return part(ask, reading, "part");
        }
        return reading.name().matches("reported\\d+")
                ? Words.of("station.readingReported", part(ask, reading, "reported"))
                : Words.of("station.reading." + reading.name());
    }

    private static String part(Ask.Determine ask, ToRead reading, String before) {
        return ask.parts().get(Integer.parseInt(reading.name().substring(before.length())) - 1);
    }

    /** Readings that cannot be true together, with what to look at. Nothing is judged by them. */
    public static Determination impossible(String field, Refusal refusal) {
        return Determination.not(
                field,
                "determineImpossible",
                Words.of(
                        refusal.impossible().key(),
                        refusal.impossible().arguments().toArray()),
                Words.of(refusal.check().key(), refusal.check().arguments().toArray()));
    }

    /** Inputs that the calculation does not take: zero volts, no current. */
    public static Determination faulty(wainbook.engineering.Fault fault) {
        return Determination.not(
                fault.field(),
                "determineFaulty",
                fault.field(),
                Words.of(fault.message().key(), fault.message().arguments().toArray()));
    }
}
