package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.electrical.Discharge;
import wainbook.engineering.electrical.Precharge;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;

/** A time that was measured, beside the one that resistance and capacitance give. Too quick is as wrong as too slow. */
public final class Timed {

    private Timed() {}

    public static Determination precharge(Figures in, Optional<Limits> works) {
        if (in.number("supplyV") > in.number("workingV")) {
            return tooHigh("supplyV", in);
        }
        var inputs = new Precharge.Inputs(
                in.number("capacitanceF"), in.number("resistanceOhm"), in.number("supplyV"), in.number("ratio"));
        List<Figure> figures = List.of(
                figure("capacitanceF", inputs.capacitanceF()),
                figure("resistanceOhm", inputs.resistanceOhm()),
                figure("supplyV", inputs.supplyV()),
                figure("ratio", inputs.ratio()));
        return new Precharge()
                .of(inputs)
                .fold(
                        working -> judged(in, works, figures, working.results().timeS()),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("supplyV", refusal));
    }

    public static Determination discharge(Figures in, Optional<Limits> works) {
        var inputs = new Discharge.Inputs(
                in.number("capacitanceF"),
                in.number("resistanceOhm"),
                in.number("startV"),
                in.number("limitV"),
                in.number("limitS"),
                0,
                0);
        if (inputs.startV() > in.number("workingV")) {
            return tooHigh("startV", in);
        }
        if (inputs.startV() <= inputs.limitV()) {
            return Determination.not("startV", "determineStartsLow", in.text("startV"), in.text("limitV"));
        }
        List<Figure> figures = List.of(
                figure("capacitanceF", inputs.capacitanceF()),
                figure("resistanceOhm", inputs.resistanceOhm()),
                figure("startV", inputs.startV()),
                figure("limitV", inputs.limitV()),
                figure("limitS", inputs.limitS()));
        Optional<Limits> within = works.or(() -> Optional.of(Limits.atMost(new BigDecimal(in.text("limitS")))));
        return new Discharge()
                .of(inputs)
                .fold(
                        working -> judged(in, within, figures, working.results().timeS()),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("startV", refusal));
    }

    private static Determination tooHigh(String name, Figures in) {
        return Determination.not(name, "determineTooHigh", in.text(name), in.text("workingV"));
    }

    private static Determination judged(Figures in, Optional<Limits> works, List<Figure> inputs, double calculatedS) {
        double measuredS = in.number("measuredS");
        double uncertaintyS = in.accuracy() / 100 * measuredS;
        double share = in.number("tolerancePercent") / 100;
        var judgements = new ArrayList<Judgement>();
        judgements.add(Judgements.calculated(
                Figures.kept(calculatedS * (1 - share)),
                Figures.kept(calculatedS * (1 + share)),
                measuredS,
                uncertaintyS));
        works.ifPresent(limits -> judgements.add(Judgements.works(limits, measuredS, uncertaintyS, "s", false)));
        return new Determination.Determined(
                inputs,
                Optional.of(Figures.kept(measuredS)),
                false,
                Optional.of(Figures.kept(uncertaintyS)),
                List.of(figure("calculatedS", calculatedS)),
                judgements);
    }
}
