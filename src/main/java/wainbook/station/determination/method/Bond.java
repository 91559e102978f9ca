package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.util.ArrayList;
import java.util.Optional;
import wainbook.engineering.Working;
import wainbook.engineering.electrical.Bonding;
import wainbook.engineering.electrical.Bonding.Inputs;
import wainbook.engineering.electrical.Bonding.Results;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;
import wainbook.station.determination.Quantities;

/** A bond by current and voltage. More than ten ohms is no contact and no bad bond: it is refused. */
public record Bond(Figures in, Optional<Limits> works) {

    private static final String LAW = "UN R100 5.1.2.2";
    private static final double VOLT_PER_MV = 1e-3;
    private static final double NO_CONTACT_OHM = 10;

    public Determination determine() {
        double voltageV = in.number("voltageMV") * VOLT_PER_MV;
        Optional<Double> reversedV = in.maybe("reversedVoltageMV").map(mv -> mv * VOLT_PER_MV);
        double leadOhm = in.maybe("leadOhm").orElse(0.0);
        Inputs first = new Inputs(in.number("currentA"), voltageV, reversedV, leadOhm, 0);
        return new Bonding()
                .of(first)
                .fold(
                        working -> known(first, working.results().resistanceOhm()),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("currentA", refusal));
    }

    /** The instrument's accuracy is a share of the reading, so the uncertainty follows from a first working. */
    private Determination known(Inputs first, double resistanceOhm) {
        if (resistanceOhm > NO_CONTACT_OHM) {
            return Determination.not("voltageMV", "determineNoContact", Quantities.ohm(resistanceOhm));
        }
        Inputs inputs = new Inputs(
                first.currentA(),
                first.voltageV(),
                first.reversedVoltageV(),
                first.leadOhm(),
                in.accuracy() / 100 * (resistanceOhm + first.leadOhm()));
        return new Bonding()
                .of(inputs)
                .fold(
                        working -> found(inputs, working),
                        faults -> Determining.faulty(faults.get(0)),
                        refusal -> Determining.impossible("currentA", refusal));
    }

    private Determination found(Inputs inputs, Working<Results> working) {
        double ohm = working.results().resistanceOhm();
        var judgements = new ArrayList<Judgement>();
        judgements.add(Judgements.law(working.decision().orElseThrow(), LAW));
        works.ifPresent(
                limits -> judgements.add(Judgements.works(limits, ohm, inputs.expandedUncertaintyOhm(), "ohm", false)));
        var figures = new ArrayList<Figure>();
        figures.add(figure("currentA", inputs.currentA()));
        figures.add(figure("voltageV", inputs.voltageV()));
        inputs.reversedVoltageV().ifPresent(volt -> figures.add(figure("reversedVoltageV", volt.doubleValue())));
        figures.add(figure("leadOhm", inputs.leadOhm()));
        figures.add(figure("expandedUncertaintyOhm", inputs.expandedUncertaintyOhm()));
        return new Determination.Determined(
                figures,
                Optional.of(Figures.kept(ohm)),
                false,
                Optional.of(Figures.kept(inputs.expandedUncertaintyOhm())),
                java.util.List.of(),
                judgements);
    }
}
