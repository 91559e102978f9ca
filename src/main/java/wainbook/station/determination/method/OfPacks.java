package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.Limit;
import wainbook.engineering.Working;
import wainbook.engineering.electrical.PackVoltages;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.By;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;

/** The packs of a vehicle before they are joined: each against what it reports, and all against one another. */
public record OfPacks(Figures in, List<String> packs) {

    private static final String PRACTICE = "common practice, no source";

    public Determination determine() {
        for (int pack = 1; pack <= packs.size(); pack++) {
            if (in.number("part" + pack) > in.number("workingV")) {
                return Determination.not(
                        "part" + pack, "determinePackAbove", in.text("part" + pack), in.text("workingV"));
            }
        }
        var inputs = new PackVoltages.Inputs(
                each("part"), each("reported"), in.number("windowV"), in.number("agreementPercent"), in.accuracy());
        return new PackVoltages()
                .of(inputs)
                .fold(
                        working -> found(inputs, working),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("part1", refusal));
    }

    private Determination found(PackVoltages.Inputs inputs, Working<PackVoltages.Results> working) {
        PackVoltages.Results out = working.results();
        double uncertaintyV = in.accuracy() / 100 * out.differenceV();
        Finding window = Judgements.finding(Limit.atMost(inputs.windowV())
                .judge(out.differenceV(), uncertaintyV, "V")
                .verdict());
        var judgements = new ArrayList<Judgement>();
        judgements.add(new Judgement(
                By.WORKS,
                Optional.empty(),
                Limits.atMost(Figures.kept(inputs.windowV())).upper(),
                Optional.of(PRACTICE),
                window));
        var results = new ArrayList<Figure>();
        results.add(figure("worstAgreementPercent", out.worstAgreementPercent()));
        if (!out.agrees()) {
            results.add(figure("disagrees", (Object) packs.get(out.worstPack() - 1)));
            judgements.add(
                    new Judgement(By.WORKS, Optional.empty(), Optional.empty(), Optional.of(PRACTICE), Finding.FAIL));
        }
        return new Determination.Determined(
                figures(inputs),
                Optional.of(Figures.kept(out.differenceV())),
                false,
                Optional.of(Figures.kept(uncertaintyV)),
                results,
                judgements);
    }

    private static List<Figure> figures(PackVoltages.Inputs inputs) {
        var all = new ArrayList<Figure>();
        inputs.measuredV().forEach(volt -> all.add(figure("measuredV", volt.doubleValue())));
        inputs.reportedV().forEach(volt -> all.add(figure("reportedV", volt.doubleValue())));
        all.add(figure("windowV", inputs.windowV()));
        all.add(figure("agreementPercent", inputs.agreementPercent()));
        all.add(figure("accuracyPercent", inputs.accuracyPercent()));
        return all;
    }

    private List<Double> each(String name) {
        return IntStream.rangeClosed(1, packs.size())
                .mapToObj(pack -> in.number(name + pack))
                .toList();
    }
}
