package wainbook.engineering.flow.history;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pace;

/**
 * What the works' own records say of the time of a stage. A record counts as the logarithm of actual over planned minutes. With
 * {@link #ENOUGH} records of a kind at a stage these are drawn from as they are; with fewer the residuals of all kinds at the stage,
 * each about its kind's median, about a level shrunk to the stage's by n / (n + {@value #SHRINKS}); below {@link #FEWEST} at the stage
 * it is the planned minutes with a stated scatter. Where vehicles differ beyond chance the residuals are narrowed by √(1 − ρ), since
 * the vehicle's pace is drawn apart. The thresholds are our choice, no published rule.
 */
public final class History {

    public static final int ENOUGH = 20;
    public static final int FEWEST = 5;
    private static final int SHRINKS = 5;

    private final Map<String, List<Finished>> byStage;
    private final double statedCv;
    private final VehicleSpread spread;

    /** @param statedCv standard deviation over mean of a time without history */
    public History(List<Finished> records, double statedCv) {
        this.byStage = records.stream().collect(Collectors.groupingBy(Finished::stage));
        this.statedCv = statedCv;
        this.spread = VehicleSpread.of(records, one -> one.residual() - level(one.kind(), one.stage()));
    }

    /** Of work at this stage on a vehicle of this kind. */
    public Times times(String kind, String stage, double plannedMinutes) {
        List<Finished> all = byStage.getOrDefault(stage, List.of());
        List<Finished> own = of(kind, all);
        var basis = new Basis(ground(own.size(), all.size()), own.size(), all.size());
        double level = level(kind, stage);
        Minutes minutes = switch (basis.ground()) {
            case OWN -> drawn(own, plannedMinutes, level);
            case POOLED -> pooled(all, plannedMinutes, level, own.size());
            case PLANNED -> Lognormal.ofMean(plannedMinutes, statedCv);
        };
        return new Times(minutes, basis);
    }

    /** Of a vehicle, by what it took at the stages it has behind it. */
    public Pace pace(List<Finished> behind) {
        double mean = behind.stream()
                .mapToDouble(one -> one.residual() - level(one.kind(), one.stage()))
                .average()
                .orElse(0);
        return Pace.after(spread.between(), spread.within(), mean, behind.size());
    }

    /** How far vehicles differ, over all stages. */
    public VehicleSpread spread() {
        return spread;
    }

    private static Basis.Ground ground(int own, int all) {
        if (own >= ENOUGH) {
            return Basis.Ground.OWN;
        }
        return all >= FEWEST ? Basis.Ground.POOLED : Basis.Ground.PLANNED;
    }

    /** Median logarithm of the kind at the stage, shrunk to the stage's where there are few. */
    private double level(String kind, String stage) {
        List<Finished> all = byStage.getOrDefault(stage, List.of());
        if (all.isEmpty()) {
            return 0;
        }
        List<Finished> own = of(kind, all);
        double weight = weight(own.size());
        double stages = median(all);
        return own.isEmpty() ? stages : weight * median(own) + (1 - weight) * stages;
    }

    private static double weight(int own) {
        return own >= ENOUGH ? 1 : own / (double) (own + SHRINKS);
    }

    private Minutes pooled(List<Finished> all, double planned, double level, int own) {
        Map<String, List<Finished>> kinds = all.stream().collect(Collectors.groupingBy(Finished::kind));
        double wider = widened(all.size(), kinds.size(), own, weight(own));
        return Minutes.Drawn.of(all.stream()
                .map(one -> minutes(wider * (one.residual() - median(kinds.get(one.kind()))), planned, level))
                .toList());
    }

    private Minutes drawn(List<Finished> own, double planned, double level) {
        return Minutes.Drawn.of(own.stream()
                .map(one -> minutes(one.residual() - level, planned, level))
                .toList());
    }

    /**
     * Residuals about medians of the same few records lie closer than those of a record to come: by √(n / (n − k)) for k medians taken
     * from n records, and the level itself is only known from so many (in the way of the inflated residuals of a bootstrap of a
     * regression; from memory).
     */
    private static double widened(int records, int medians, int own, double weight) {
        double level = (own == 0 ? 0 : weight * weight / own) + (1 - weight) * (1 - weight) / records;
        return Math.sqrt((double) records / Math.max(1, records - medians) * (1 + level));
    }

    private double minutes(double residual, double planned, double level) {
        return planned * Math.exp(level + residual * Math.sqrt(1 - spread.share()));
    }

    private static List<Finished> of(String kind, List<Finished> all) {
        return all.stream().filter(one -> one.kind().equals(kind)).toList();
    }

    private static double median(List<Finished> some) {
        List<Double> sorted = some.stream()
                .map(Finished::residual)
                .sorted(Comparator.naturalOrder())
                .toList();
        int n = sorted.size();
        return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
    }
}
