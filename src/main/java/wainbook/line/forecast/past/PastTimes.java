package wainbook.line.forecast.past;

import java.util.List;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pace;
import wainbook.engineering.flow.history.Finished;
import wainbook.engineering.flow.history.History;
import wainbook.engineering.flow.history.Times;

/**
 * Times to draw from, out of the works' own record. Where there are fewer than {@link #FEWEST} the next wider group is taken; the
 * figures that are assumed without any record are our choice, no published rule, and the page says where they are used.
 */
public final class PastTimes {

    public static final int FEWEST = 5;
    /** Standard deviation over mean of work that has no history. */
    public static final double ASSUMED_SPREAD = 0.5;
    /** A hold or a stay in a bay of which the works has no history: a working day, spread widely. */
    public static final double ASSUMED_STOP_MINUTES = 480;

    private static final double ASSUMED_STOP_SPREAD = 1;

    private final List<VehiclePast> pasts;
    private final List<PastVisit> visits;
    private final History history;

    public PastTimes(List<VehiclePast> pasts) {
        this.pasts = List.copyOf(pasts);
        this.visits = pasts.stream().flatMap(past -> past.visits().stream()).toList();
        this.history = new History(visits.stream().map(PastVisit::finished).toList(), ASSUMED_SPREAD);
    }

    public List<PastVisit> visits() {
        return visits;
    }

    /** Each stay's work beside the plan of its sheet. */
    public List<Finished> finished() {
        return visits.stream().map(PastVisit::finished).toList();
    }

    /** Vehicles of which at least one stay is known. */
    public int vehicles() {
        return (int) visits.stream().map(PastVisit::order).distinct().count();
    }

    public Times work(String kind, String stage, double plannedMinutes) {
        return history.times(kind, stage, plannedMinutes);
    }

    /** By the stages that the vehicle has behind it. */
    public Pace pace(String order) {
        List<Finished> behind = visits.stream()
                .filter(one -> one.order().equals(order))
                .map(PastVisit::finished)
                .toList();
        return history.pace(behind);
    }

    /** From the last evidence to the gate's being looked at; none where the works has next to no record of it. */
    public Minutes signature(String stage) {
        List<Double> here = at(stage).map(PastVisit::signatureMinutes).toList();
        List<Double> all = visits.stream().map(PastVisit::signatureMinutes).toList();
        return drawn(here.size() >= FEWEST ? here : all, Minutes.NONE);
    }

    /** The share of gates that were refused when first looked at: the stage's, with few of them drawn towards all stages'. */
    public double refusal(String stage) {
        if (visits.isEmpty()) {
            return 0;
        }
        double all = visits.stream().filter(PastVisit::refused).count() / (visits.size() + 1.0);
        long refused = at(stage).filter(PastVisit::refused).count();
        return (refused + FEWEST * all) / (at(stage).count() + FEWEST);
    }

    /** Work after a refusal; as many minutes as there were, of all stages together. */
    public Minutes again() {
        List<Double> all = visits.stream()
                .flatMap(one -> one.againMinutes().stream().boxed())
                .toList();
        return all.isEmpty() ? Minutes.NONE : Minutes.Drawn.of(all);
    }

    /** How long such a stop lasts in all. */
    public Minutes stop(Stop sort) {
        List<Double> all =
                pasts.stream().flatMap(past -> past.minutes(sort).stream()).toList();
        return drawn(all, Lognormal.ofMean(ASSUMED_STOP_MINUTES, ASSUMED_STOP_SPREAD));
    }

    public boolean known(Stop sort) {
        return stop(sort) instanceof Minutes.Drawn;
    }

    /** Below it no wait for a signature is counted with. */
    public boolean signaturesKnown() {
        return visits.size() >= FEWEST;
    }

    private static Minutes drawn(List<Double> lengths, Minutes otherwise) {
        return lengths.size() >= FEWEST ? Minutes.Drawn.of(lengths) : otherwise;
    }

    private Stream<PastVisit> at(String stage) {
        return visits.stream().filter(one -> one.stage().equals(stage));
    }
}
