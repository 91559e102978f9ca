package wainbook.line.balance.content;

import java.util.List;
import wainbook.engineering.flow.history.Finished;
import wainbook.engineering.flow.score.Quantile;
import wainbook.line.forecast.past.PastTimes;

/**
 * The stays that are on record, the same that the forecast draws from. They say how long a vehicle was worked on at a stage, not how
 * long an item took: a stage's pace goes over all its items alike, which is our choice, no published rule.
 */
public record Recorded(List<Finished> stays) {

    /** Fewer say nothing. */
    public static final int FEWEST = PastTimes.FEWEST;

    /** With it all planned minutes stand. */
    public static final Recorded NOTHING = new Recorded(List.of());

    private static final double MEDIAN = 0.5;

    public Recorded {
        stays = List.copyOf(stays);
    }

    public Pace pace(String stage, String kind) {
        List<Finished> here =
                stays.stream().filter(stay -> stay.stage().equals(stage)).toList();
        List<Finished> own =
                here.stream().filter(stay -> stay.kind().equals(kind)).toList();
        if (own.size() >= FEWEST) {
            return new Pace(stage, kind, Pace.Ground.KIND, factor(own), own.size());
        }
        return here.size() >= FEWEST
                ? new Pace(stage, kind, Pace.Ground.STAGE, factor(here), here.size())
                : new Pace(stage, kind, Pace.Ground.PLANNED, 1, here.size());
    }

    private static double factor(List<Finished> some) {
        return Quantile.TYPE_7.of(
                some.stream()
                        .mapToDouble(stay -> stay.minutes() / stay.plannedMinutes())
                        .sorted()
                        .toArray(),
                MEDIAN);
    }
}
