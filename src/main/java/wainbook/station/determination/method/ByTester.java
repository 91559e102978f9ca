package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.engineering.Working;
import wainbook.engineering.electrical.IsolationDirect;
import wainbook.engineering.electrical.IsolationDirect.Inputs;
import wainbook.engineering.electrical.IsolationDirect.Results;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;

/** Insulation resistance by a tester. Its ceiling is kept as at least that much, never as a value. */
public record ByTester(Figures in, Optional<Limits> works) {

    private static final Map<String, Double> OHM = Map.of("kΩ", 1e3, "MΩ", 1e6, "GΩ", 1e9);

    public Determination determine() {
        double ohm = in.number("measured") * OHM.getOrDefault(in.text("prefix"), 0.0);
        boolean openEnded = in.text("shown").equals("ceiling");
        Inputs inputs = new Inputs(
                openEnded ? Optional.empty() : Optional.of(ohm),
                openEnded ? Optional.of(ohm) : Optional.empty(),
                in.number("testV"),
                in.number("workingV"),
                in.number("limitOhmPerVolt"),
                in.accuracy());
        return new IsolationDirect()
                .of(inputs)
                .fold(
                        working -> found(inputs, ohm, working),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("testV", refusal));
    }

    private Determination found(Inputs inputs, double ohm, Working<Results> working) {
        Results out = working.results();
        var judgements = new ArrayList<Judgement>();
        judgements.add(Judgements.law(working.decision().orElseThrow(), ByVoltmeter.LAW));
        works.ifPresent(limits -> judgements.add(
                Judgements.works(limits, out.isolationOhm(), out.expandedUncertaintyOhm(), "ohm", out.openEnded())));
        return new Determination.Determined(
                List.of(
                        figure(out.openEnded() ? "atLeastOhm" : "measuredOhm", ohm),
                        figure("testV", inputs.testV()),
                        figure("workingV", inputs.workingV()),
                        figure("limitOhmPerVolt", inputs.limitOhmPerVolt()),
                        figure("accuracyPercent", inputs.accuracyPercent())),
                Optional.of(Figures.kept(out.isolationOhm())),
                out.openEnded(),
                Optional.of(Figures.kept(out.expandedUncertaintyOhm())),
                List.of(
                        figure("ohmPerVolt", out.ohmPerVolt()),
                        figure("limitOhm", out.limitOhm()),
                        figure("parallelOhm", out.isolationOhm())),
                judgements);
    }
}
