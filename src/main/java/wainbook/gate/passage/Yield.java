package wainbook.gate.passage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Working;
import wainbook.engineering.statistics.DefectRate;
import wainbook.engineering.statistics.RateInterval;
import wainbook.engineering.statistics.RolledYield;

/**
 * What came out right the first time, of the passages of a time and a kind of vehicle.
 *
 * @param stages in the order that vehicles pass them
 */
public record Yield(List<Passage> passages, List<StageYield> stages) {

    private static final double CONFIDENCE = 0.95;

    public Yield {
        passages = List.copyOf(passages);
        stages = List.copyOf(stages);
    }

    /** One stage: how many vehicles were signed off there, how many of them with nothing put right. */
    public record StageYield(String stage, int vehicles, int firstPass, Working<RateInterval.Results> share) {}

    /** @param order of the stages */
    public static Yield of(List<Passage> passages, List<String> order) {
        Map<String, List<Passage>> byStage = new LinkedHashMap<>();
        order.forEach(stage -> byStage.put(stage, new ArrayList<>()));
        passages.forEach(one ->
                byStage.computeIfAbsent(one.stage(), none -> new ArrayList<>()).add(one));
        return new Yield(
                passages,
                byStage.entrySet().stream()
                        .filter(one -> !one.getValue().isEmpty())
                        .map(one -> stage(one.getKey(), one.getValue()))
                        .toList());
    }

    private static StageYield stage(String stage, List<Passage> passages) {
        int first = (int) passages.stream().filter(Passage::firstPass).count();
        return new StageYield(stage, passages.size(), first, share(first, passages.size(), CONFIDENCE));
    }

    private static Working<RateInterval.Results> share(int first, int of, double confidence) {
        return worked(new RateInterval().of(new RateInterval.Inputs(first, of, confidence)));
    }

    private static <R extends Record> Working<R> worked(Answer<R> answer) {
        return answer.fold(
                working -> working,
                faults -> {
                    throw new IllegalStateException(faults.toString());
                },
                impossible -> {
                    throw new IllegalStateException(impossible.toString());
                });
    }

    /** The product of all stages' shares; absent where no stage was signed off. */
    public Optional<Working<RolledYield.Results>> rolled() {
        return stages.isEmpty()
                ? Optional.empty()
                : Optional.of(worked(new RolledYield()
                        .of(new RolledYield.Inputs(stages.stream()
                                .map(stage -> stage.firstPass() / (double) stage.vehicles())
                                .toList()))));
    }

    /**
     * Between which shares the rolled yield lies with at least 95 %: the products of the stages' exact ends, each with
     * 1 − 0.05 / stages (Bonferroni), so that all hold together.
     */
    public double rolledLow() {
        return together().map(RateInterval.Results::exactLow).reduce(1.0, (one, other) -> one * other);
    }

    public double rolledHigh() {
        return together().map(RateInterval.Results::exactHigh).reduce(1.0, (one, other) -> one * other);
    }

    private Stream<RateInterval.Results> together() {
        double each = 1 - (1 - CONFIDENCE) / stages.size();
        return stages.stream()
                .map(one -> share(one.firstPass(), one.vehicles(), each).results());
    }

    /** Vehicles with a stage signed off. */
    public int vehicles() {
        return (int) passages.stream().map(Passage::order).distinct().count();
    }

    public List<Slip> slips() {
        return passages.stream().flatMap(one -> one.slips().stream()).toList();
    }

    public int defects() {
        return (int) slips().stream().filter(Slip::defect).count();
    }

    /** Items answered for each vehicle, on average and rounded: the opportunities. */
    public int opportunities() {
        int items = passages.stream().mapToInt(Passage::items).sum();
        return vehicles() == 0 ? 0 : Math.max(1, Math.round(items / (float) vehicles()));
    }

    /** Absent without vehicles. */
    public Optional<Working<DefectRate.Results>> defectRate() {
        return vehicles() == 0
                ? Optional.empty()
                : new DefectRate()
                        .of(new DefectRate.Inputs(defects(), vehicles(), opportunities()))
                        .fold(Optional::of, faults -> Optional.empty(), impossible -> Optional.empty());
    }
}
