package wainbook.line.forecast;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import wainbook.engineering.flow.score.Quantile;
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.PastVisit;
import wainbook.line.forecast.state.TheLineNow;

/**
 * What the record says of one stage, over all kinds of vehicle.
 *
 * @param visits recorded
 * @param workMinutes the median
 * @param signatureMinutes the median
 * @param refused gates that were refused when first looked at
 */
public record StageLook(
        TheLineNow.Post post,
        int visits,
        Optional<Double> workMinutes,
        Optional<Double> signatureMinutes,
        long refused) {

    public static StageLook of(TheLineNow.Post post, PastTimes past) {
        List<PastVisit> here = past.visits().stream()
                .filter(one -> one.stage().equals(post.stage()))
                .toList();
        return new StageLook(
                post,
                here.size(),
                median(here, PastVisit::workMinutes),
                median(here, PastVisit::signatureMinutes),
                here.stream().filter(PastVisit::refused).count());
    }

    private static Optional<Double> median(List<PastVisit> visits, ToDoubleFunction<PastVisit> minutes) {
        double[] sorted = visits.stream().mapToDouble(minutes).sorted().toArray();
        return sorted.length == 0 ? Optional.empty() : Optional.of(Quantile.TYPE_7.of(sorted, 0.5));
    }
}
