package wainbook.engineering.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.flow.simulation.Draws;
import wainbook.engineering.flow.simulation.Law;
import wainbook.engineering.flow.simulation.Shares;
import wainbook.engineering.flow.simulation.Spell;
import wainbook.engineering.flow.simulation.WorkTime;
import wainbook.engineering.statistics.Sample;

/**
 * What a line of stages in series makes in an hour, by simulation: vehicles keep their order, a vehicle that is done keeps its
 * station until there is a place ahead, there is always a vehicle waiting in front and always room behind the end. The interval is
 * that of a mean of independent replications, mean ± t · s / √n.
 */
public final class SerialLine implements Calculation<SerialLine.Inputs, SerialLine.Results> {

    private static final double MOST_PASSAGES = 5e7;
    private static final double MINUTES_AN_HOUR = 60;
    private static final double ONE_SIDE = 0.975;

    /**
     * One stage of the line.
     *
     * @param cv standard deviation over mean: asked of a lognormal law; a uniform law without it begins at nought
     * @param servers stations side by side
     */
    public record Station(
            Law distribution,
            @Domain(above = 0) double meanMinutes,
            Optional<@Domain(from = 0) Double> cv,
            @Preset("1") @Domain(from = 1, to = 100) int servers) {

        WorkTime time() {
            return WorkTime.of(
                    distribution, meanMinutes, cv.orElse(distribution == Law.UNIFORM ? Law.WIDEST_UNIFORM : 1));
        }

        Optional<Fault> fault(String field) {
            return switch (distribution) {
                case LOGNORMAL -> cv.isPresent() ? Optional.empty() : Optional.of(Fault.of(field, "missing"));
                case UNIFORM ->
                    cv.filter(given -> given > Law.WIDEST_UNIFORM)
                            .map(given -> Fault.of(field, "to", Law.WIDEST_UNIFORM));
                case EXPONENTIAL -> cv.filter(given -> given != 1).map(given -> Fault.of(field, "oneOf", 1));
                case DETERMINISTIC -> cv.filter(given -> given != 0).map(given -> Fault.of(field, "oneOf", 0));
            };
        }
    }

    /**
     * @param rooms places between one stage and the next
     * @param vehicles counted in each replication
     * @param warmUp vehicles that go ahead of them and are not counted, since the line begins empty
     */
    public record Inputs(
            @Size(from = 1, to = 100) List<Station> stations,
            @Size(to = 99) List<@Domain(from = 0, to = 10_000) Integer> rooms,
            @Domain(from = 1, to = 1e7) int vehicles,
            @Domain(from = 0, to = 1e7) int warmUp,
            @Domain(from = 1, to = 10_000) int replications,
            long seed)
            implements Checked {
        public Inputs {
            stations = List.copyOf(stations);
            rooms = List.copyOf(rooms);
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            if (rooms.size() != stations.size() - 1) {
                faults.add(Fault.of("rooms", "size", stations.size() - 1, stations.size() - 1));
            }
            for (int i = 0; i < stations.size(); i++) {
                stations.get(i).fault("stations[" + i + "].cv").ifPresent(faults::add);
            }
            if (passages() > MOST_PASSAGES) {
                faults.add(Fault.of("vehicles", "tooManyPassages", MOST_PASSAGES));
            }
            return faults;
        }

        private double passages() {
            return ((double) vehicles + warmUp) * replications * stations.size();
        }

        private boolean certain() {
            return stations.stream().allMatch(station -> station.distribution() == Law.DETERMINISTIC);
        }
    }

    /**
     * @param perHour vehicles
     * @param perHourLow and {@code perHourHigh}: 95 % interval, absent for a single replication of times that vary
     * @param utilisation share of the stations' time at work, stage by stage; with the other three it makes 1
     * @param blocked share of time done, in turn, and without a place ahead
     * @param starved share of time without a vehicle
     * @param outOfTurn share of time done while the vehicle ahead is still at a station beside; nought for single stations
     */
    public record Results(
            double perHour,
            Optional<Double> perHourLow,
            Optional<Double> perHourHigh,
            List<Double> utilisation,
            List<Double> blocked,
            List<Double> starved,
            List<Double> outOfTurn) {
        public Results {
            utilisation = List.copyOf(utilisation);
            blocked = List.copyOf(blocked);
            starved = List.copyOf(starved);
            outOfTurn = List.copyOf(outOfTurn);
        }
    }

    @Override
    public String name() {
        return "serial-line";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory(
                        "E. J. Muth, 1979; J. A. Buzacott and J. G. Shanthikumar, 1993", "recursion of a serial line"),
                Source.memory("A. M. Law, Simulation Modeling and Analysis", "independent replications, interval by t"),
                Source.seen("Public test suites", "reference outputs of SplitMix64"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.modelKnowsNoMore"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<Spell> spells = spells(in);
        var perHour = new Sample(spells.stream()
                .map(spell -> spell.perMinute() * MINUTES_AN_HOUR)
                .toList());
        double mean =
                perHour.values().stream().mapToDouble(one -> one).average().orElseThrow();
        Optional<Double> half = in.certain()
                ? Optional.of(0.0)
                : Optional.of(in.replications()).filter(several -> several > 1).map(n -> half(perHour.s(), n));
        var results = new Results(
                mean,
                half.map(wide -> mean - wide),
                half.map(wide -> mean + wide),
                shares(in, spells, Shares::working),
                shares(in, spells, Shares::blocked),
                shares(in, spells, Shares::starved),
                shares(in, spells, Shares::outOfTurn));
        var throughput = Step.of(
                "perHour",
                "60 · mean of vehicles / (last leaves − last of the warm-up leaves)",
                mean,
                "",
                "vehicles: %s, replications: %s",
                in.vehicles(),
                in.replications());
        if (in.certain() || half.isEmpty()) {
            String key = in.certain() ? "engineering.serial-line.certain" : "engineering.serial-line.once";
            return found(results, Sentence.brief(key, mean), throughput);
        }
        double wide = half.get();
        return found(
                results,
                Sentence.brief("engineering.serial-line.none", mean, mean - wide, mean + wide),
                throughput,
                Step.of("halfWidth", "t(0.975; n − 1) · s / √n", wide, "", "n = %s", in.replications()));
    }

    /** Each replication hangs on its own key alone, so they may run in any order, on any number of threads. */
    private static List<Spell> spells(Inputs in) {
        List<WorkTime> times = in.stations().stream().map(Station::time).toList();
        int[] servers = in.stations().stream().mapToInt(Station::servers).toArray();
        int[] rooms = in.rooms().stream().mapToInt(Integer::intValue).toArray();
        long key = Draws.key(in.seed());
        return IntStream.rangeClosed(1, in.replications())
                .parallel()
                .mapToObj(one -> Spell.of(times, servers, rooms, in.warmUp(), in.vehicles(), Draws.key(key, one)))
                .toList();
    }

    private static double half(double s, int n) {
        return TDistribution.of(n - 1.0).inverseCumulativeProbability(ONE_SIDE) * s / Math.sqrt(n);
    }

    private static List<Double> shares(Inputs in, List<Spell> spells, ToDoubleFunction<Shares> share) {
        return IntStream.range(0, in.stations().size())
                .mapToObj(stage -> spells.stream()
                        .mapToDouble(spell -> share.applyAsDouble(spell.stages().get(stage)))
                        .average()
                        .orElseThrow())
                .toList();
    }
}
