package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.engineering.electrical.IsolationCombined;
import wainbook.engineering.electrical.YCapacitorEnergy;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;

/** What the parts of a vehicle come to together. */
public final class OfParts {

    private static final double OHM_PER_MOHM = 1e6;
    private static final double FARAD_PER_NF = 1e-9;
    private static final String LAW_ENERGY = "ISO 6469-4:2015 5.2.3";

    private OfParts() {}

    public static Determination insulation(Figures in, List<String> parts, Optional<Limits> works) {
        List<Double> ohm = each(in, parts, OHM_PER_MOHM);
        var inputs = new IsolationCombined.Inputs(ohm, in.number("workingV"), in.number("limitOhmPerVolt"));
        return new IsolationCombined()
                .of(inputs)
                .fold(
                        working -> {
                            double value = working.results().parallelOhm();
                            double uncertaintyOhm = in.accuracy() / 100 * value;
                            var judgements = new ArrayList<Judgement>();
                            judgements.add(Judgements.law(
                                    wainbook.engineering.Limit.atLeast(inputs.limitOhmPerVolt() * inputs.workingV())
                                            .judge(value, uncertaintyOhm, "ohm"),
                                    ByVoltmeter.LAW));
                            works.ifPresent(limits ->
                                    judgements.add(Judgements.works(limits, value, uncertaintyOhm, "ohm", false)));
                            var results = new ArrayList<Figure>();
                            for (int part = 0; part < parts.size(); part++) {
                                results.add(figure(
                                        parts.get(part),
                                        working.results().shares().get(part).doubleValue()));
                            }
                            results.add(figure("ohmPerVolt", working.results().ohmPerVolt()));
                            results.add(figure("budgetOhm", working.results().budgetOhm()));
                            String below = working.results().belowBudget().stream()
                                    .map(part -> parts.get(part - 1))
                                    .collect(Collectors.joining(", "));
                            if (!below.isEmpty()) {
                                results.add(figure("belowBudget", (Object) below));
                            }
                            return (Determination) new Determination.Determined(
                                    listed(
                                            "partsOhm",
                                            ohm,
                                            inputs.workingV(),
                                            "workingV",
                                            inputs.limitOhmPerVolt(),
                                            "limitOhmPerVolt"),
                                    Optional.of(Figures.kept(value)),
                                    false,
                                    Optional.of(Figures.kept(uncertaintyOhm)),
                                    results,
                                    judgements);
                        },
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("part1", refusal));
    }

    public static Determination capacitors(Figures in, List<String> parts, Optional<Limits> works) {
        List<Double> farad = each(in, parts, FARAD_PER_NF);
        double limitJ = in.maybe("limitJ").orElse(0.2);
        var inputs = new YCapacitorEnergy.Inputs(farad, in.number("voltageV"), limitJ);
        return new YCapacitorEnergy()
                .of(inputs)
                .fold(
                        working -> {
                            double value = working.results().energyJ();
                            var judgements = new ArrayList<Judgement>();
                            judgements.add(Judgements.law(working.decision().orElseThrow(), LAW_ENERGY));
                            works.ifPresent(limits -> judgements.add(Judgements.works(limits, value, 0, "J", false)));
                            return (Determination) new Determination.Determined(
                                    listed("capacitancesF", farad, inputs.voltageV(), "voltageV", limitJ, "limitJ"),
                                    Optional.of(Figures.kept(value)),
                                    false,
                                    Optional.empty(),
                                    List.of(figure(
                                            "largestTotalF", working.results().largestTotalF())),
                                    judgements);
                        },
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("part1", refusal));
    }

    private static List<Double> each(Figures in, List<String> parts, double factor) {
        return IntStream.rangeClosed(1, parts.size())
                .mapToObj(part -> in.number("part" + part) * factor)
                .toList();
    }

    private static List<Figure> listed(
            String name, List<Double> values, double second, String secondName, double third, String thirdName) {
        var all = new ArrayList<Figure>();
        values.forEach(value -> all.add(figure(name, value.doubleValue())));
        all.add(figure(secondName, second));
        all.add(figure(thirdName, third));
        return all;
    }
}
