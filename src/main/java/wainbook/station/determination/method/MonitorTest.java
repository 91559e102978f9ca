package wainbook.station.determination.method;

import static wainbook.station.determination.Figures.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.Limit;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.Determination;
import wainbook.station.determination.Determining;
import wainbook.station.determination.Figures;
import wainbook.station.determination.Judgements;
import wainbook.station.determination.Quantities;
import wainbook.station.determination.TestResistors;

/** The insulation monitor warns in time with one resistor on each rail, and keeps still with the other. */
public record MonitorTest(Figures in) {

    private static final double OHM_PER_KOHM = 1e3;

    public Determination determine() {
        return TestResistors.of(in).fold(this::with, refusal -> Determining.impossible("alarmResistorKOhm", refusal));
    }

    private Determination with(TestResistors chosen) {
        double alarmOhm =
                in.maybe("alarmResistorKOhm").map(kilo -> kilo * OHM_PER_KOHM).orElse(chosen.alarmOhm());
        if (!chosen.mustAlarmWith(alarmOhm)) {
            return Determination.not(
                    "alarmResistorKOhm",
                    "determineResistorInconclusive",
                    Quantities.ohm(alarmOhm),
                    Quantities.ohm(chosen.together(alarmOhm)),
                    Quantities.ohm(chosen.alarmOhm()));
        }
        for (String rail : List.of("Negative", "Positive")) {
            if (in.text("alarm" + rail).equals("alarm") && !in.has("alarm" + rail + "S")) {
                return Determination.not("alarm" + rail + "S", "determineTimeMissing");
            }
            if (chosen.clearOhm().isPresent() && !in.has("clear" + rail)) {
                return Determination.not("clear" + rail, "determineClearMissing");
            }
        }
        return judged(chosen, alarmOhm);
    }

    private Determination judged(TestResistors chosen, double alarmOhm) {
        boolean silent = Stream.of("alarmNegative", "alarmPositive")
                .anyMatch(rail -> in.text(rail).equals("silent"));
        boolean false_ = Stream.of("clearNegative", "clearPositive").anyMatch(rail -> "alarm".equals(in.text(rail)));
        Optional<Double> slowestS = silent
                ? Optional.empty()
                : Optional.of(Math.max(in.number("alarmNegativeS"), in.number("alarmPositiveS")));
        BigDecimal limitS = new BigDecimal(in.text("alarmWithinS"));
        Finding finding = false_ || slowestS.isEmpty()
                ? Finding.FAIL
                : Judgements.finding(Limit.atMost(limitS.doubleValue())
                        .judge(slowestS.get(), 0, "s")
                        .verdict());
        var results = new ArrayList<Figure>();
        results.add(figure("alarmResistorOhm", alarmOhm));
        results.add(figure("togetherOhm", chosen.together(alarmOhm)));
        chosen.clearOhm().ifPresent(ohm -> results.add(figure("clearResistorOhm", ohm.doubleValue())));
        results.add(figure("silent", silent ? "yes" : "no"));
        results.add(figure("falseAlarm", false_ ? "yes" : "no"));
        Judgement works = new Judgement(
                wainbook.station.StationSaying.By.WORKS,
                Optional.empty(),
                Limits.atMost(limitS).upper(),
                Optional.of("IEC 61557-8, from memory"),
                finding);
        return new Determination.Determined(
                chosen.inputs(), slowestS.map(Figures::kept), false, Optional.empty(), results, List.of(works));
    }
}
