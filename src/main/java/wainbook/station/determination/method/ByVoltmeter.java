package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.engineering.Plain;
import wainbook.engineering.Working;
import wainbook.engineering.electrical.IsolationVoltmeter;
import wainbook.engineering.electrical.IsolationVoltmeter.Inputs;
import wainbook.engineering.electrical.IsolationVoltmeter.Rail;
import wainbook.engineering.electrical.IsolationVoltmeter.Results;
import wainbook.page.Words;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.By;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;
import wainbook.station.determination.Quantities;

/** Insulation resistance by the vehicle's own pack. The rail for the resistor is chosen here and never typed. */
public record ByVoltmeter(Figures in, Optional<Limits> works) {

    public static final String LAW = "UN R100 5.1.3";
    private static final double LEAST_METER_MOHM = 10;
    private static final double DEAD_EARTH_SHARE = 0.02;
    private static final double LOW_SUM_SHARE = 0.9;
    private static final double OHM_PER_MOHM = 1e6;

    public Determination determine() {
        double busV = in.number("busV");
        if (in.number("meterMOhm") < LEAST_METER_MOHM) {
            return Determination.not("meterMOhm", "determineMeterLow", in.text("meterMOhm"));
        }
        if (busV < in.number("nominalV") || busV > in.number("workingV")) {
            return Determination.not(
                    "busV", "determineBusOutside", in.text("busV"), in.text("nominalV"), in.text("workingV"));
        }
        if (IsolationVoltmeter.railsExceedBus(busV, in.number("negativeToChassisV"), in.number("positiveToChassisV"))) {
            return Determination.not(
                    "negativeToChassisV",
                    "determineRailsExceed",
                    in.text("negativeToChassisV"),
                    in.text("positiveToChassisV"),
                    in.text("busV"));
        }
        if (deadEarth()) {
            return new Determination.Determined(
                    List.of(),
                    Optional.empty(),
                    false,
                    Optional.empty(),
                    List.of(figure("deadEarth", rail(lower()))),
                    List.of(new Judgement(By.LAW, Optional.empty(), Optional.empty(), Optional.of(LAW), Finding.FAIL)));
        }
        return in.has("withResistorV")
                ? worked()
                : Determination.not("withResistorV", "nextResistor", rail(higher()), ohm());
    }

    private Determination worked() {
        Inputs inputs = inputs();
        return new IsolationVoltmeter()
                .of(inputs)
                .fold(
                        working -> agrees(working) ? found(inputs, working) : disagree(working),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("withResistorV", refusal));
    }

    private Inputs inputs() {
        return new Inputs(
                in.number("busV"),
                in.number("negativeToChassisV"),
                in.number("positiveToChassisV"),
                in.number("withResistorV"),
                in.number("insertedOhm"),
                higher(),
                in.number("workingV"),
                in.number("limitOhmPerVolt"),
                in.accuracy(),
                in.maybe("readingFloorV").orElse(0.0),
                in.maybe("insertedTolerancePercent").orElse(0.0),
                Optional.of(in.number("meterMOhm") * OHM_PER_MOHM));
    }

    private Determination found(Inputs inputs, Working<Results> working) {
        Results out = working.results();
        var judgements = new ArrayList<Judgement>();
        judgements.add(Judgements.law(working.decision().orElseThrow(), LAW));
        works.ifPresent(limits -> judgements.add(
                Judgements.works(limits, out.isolationOhm(), out.expandedUncertaintyOhm(), "ohm", false)));
        var results = new ArrayList<>(List.of(
                figure("insertedRail", higher()),
                figure("ohmPerVolt", out.ohmPerVolt()),
                figure("limitOhm", out.limitOhm())));
        out.parallelOhm().ifPresent(ohm -> results.add(figure("parallelOhm", ohm.doubleValue())));
        return new Determination.Determined(
                figures(inputs),
                Optional.of(Figures.kept(out.isolationOhm())),
                false,
                Optional.of(Figures.kept(out.expandedUncertaintyOhm())),
                results,
                judgements);
    }

    private static List<Figure> figures(Inputs inputs) {
        return List.of(
                figure("busV", inputs.busV()),
                figure("negativeToChassisV", inputs.negativeToChassisV()),
                figure("positiveToChassisV", inputs.positiveToChassisV()),
                figure("withResistorV", inputs.withResistorV()),
                figure("insertedOhm", inputs.insertedOhm()),
                figure("insertedRail", inputs.insertedRail()),
                figure("workingV", inputs.workingV()),
                figure("limitOhmPerVolt", inputs.limitOhmPerVolt()),
                figure("readingAccuracyPercent", inputs.readingAccuracyPercent()),
                figure("readingFloorV", inputs.readingFloorV()),
                figure("insertedTolerancePercent", inputs.insertedTolerancePercent()),
                figure("meterOhm", inputs.meterOhm().orElseThrow().doubleValue()));
    }

    /**
     * Where the rails' sum is low, R∥ from it must lie between half of Ri and Ri, else a lead was open or unsteady. It is the
     * weaker the nearer the sum comes to the bus; asked only where it says something.
     */
    private boolean agrees(Working<Results> working) {
        double busV = in.number("busV");
        double sumV = in.number("negativeToChassisV") + in.number("positiveToChassisV");
        if (sumV >= LOW_SUM_SHARE * busV) {
            return true;
        }
        double ohm = working.results().isolationOhm();
        double parallelOhm = in.number("meterMOhm") * OHM_PER_MOHM * (busV / sumV - 1);
        double loose = 2 * in.accuracy() / 100 * busV / (busV - sumV)
                + working.results().expandedUncertaintyOhm() / ohm;
        return parallelOhm >= ohm / 2 * (1 - loose) && parallelOhm <= ohm * (1 + loose);
    }

    private Determination disagree(Working<Results> working) {
        return Determination.not(
                "withResistorV",
                "determineDisagree",
                in.text("negativeToChassisV"),
                in.text("positiveToChassisV"),
                in.text("busV"),
                Plain.beside(0, working.results().isolationOhm()));
    }

    private boolean deadEarth() {
        double least = Math.min(in.number("negativeToChassisV"), in.number("positiveToChassisV"));
        double most = Math.max(in.number("negativeToChassisV"), in.number("positiveToChassisV"));
        return least <= DEAD_EARTH_SHARE * in.number("busV") && most >= (1 - 2 * DEAD_EARTH_SHARE) * in.number("busV");
    }

    private Rail higher() {
        return IsolationVoltmeter.railFor(in.number("negativeToChassisV"), in.number("positiveToChassisV"));
    }

    private Rail lower() {
        return higher() == Rail.NEGATIVE ? Rail.POSITIVE : Rail.NEGATIVE;
    }

    private static String rail(Rail rail) {
        return Words.of("station.rail." + rail.name().toLowerCase(Locale.ROOT));
    }

    private String ohm() {
        return Quantities.ohm(in.number("insertedOhm"));
    }
}
