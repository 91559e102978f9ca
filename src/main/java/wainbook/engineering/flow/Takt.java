package wainbook.engineering.flow;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/** Takt = available working time of a period / demand of that period, and the least number of stations for a work content. */
public final class Takt implements Calculation<Takt.Inputs, Takt.Results> {

    private static final double MOST_STATIONS = 1e9;

    /**
     * @param demand vehicles in the period
     * @param workMinutes work content of one vehicle as one station would spend it
     * @param efficiency the share of the takt that is planned to be worked
     */
    public record Inputs(
            @Domain(above = 0) double availableMinutes,
            @Domain(above = 0) double demand,
            Optional<@Domain(above = 0) Double> workMinutes,
            @Preset("1") @Domain(above = 0, to = 1) double efficiency) {}

    /** @param stationsAtLeast absent if no work content was given */
    public record Results(double taktMinutes, Optional<Long> stationsAtLeast) {}

    @Override
    public String name() {
        return "takt";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen(
                "Lecture notes on assembly line balancing", "cycle time and theoretical number of stations"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double taktMinutes = in.availableMinutes() / in.demand();
        Optional<Double> stations = in.workMinutes().map(work -> work / (taktMinutes * in.efficiency()));
        if (stations.filter(needed -> !(needed <= MOST_STATIONS)).isPresent()) {
            return Answer.impossible("beyond-reckoning");
        }
        Optional<Long> atLeast = stations.map(needed -> (long) Math.ceil(Plain.compared(needed)));
        Sentence because = atLeast.map(count -> Sentence.of("engineering.takt.stations", taktMinutes, count))
                .orElse(Sentence.of("engineering.takt.none", taktMinutes));
        return Answer.worked(new Working<>(
                new Results(taktMinutes, atLeast),
                Optional.empty(),
                because,
                Stream.concat(
                                Stream.of(Step.of(
                                        "takt",
                                        "T = available / demand",
                                        taktMinutes,
                                        "min",
                                        "%s / %s",
                                        in.availableMinutes(),
                                        in.demand())),
                                stations.stream()
                                        .map(needed -> Step.of(
                                                "stations",
                                                "work / (T · efficiency), rounded up",
                                                needed,
                                                "",
                                                "%s / (%s · %s)",
                                                in.workMinutes().orElseThrow(),
                                                taktMinutes,
                                                in.efficiency())))
                        .toList(),
                sources(),
                List.of()));
    }
}
