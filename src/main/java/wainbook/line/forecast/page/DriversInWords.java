package wainbook.line.forecast.page;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.engineering.flow.forecast.outcome.Cause;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.engineering.flow.history.Basis;
import wainbook.engineering.flow.history.Basis.Ground;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.page.Formats;
import wainbook.page.Words;

/** What a vehicle's time goes into, and what it rests on. */
final class DriversInWords {

    private static final int NAMED = 3;
    private static final double WORTH_NAMING = 0.05;

    private DriversInWords() {}

    /** The largest shares of its mean time, the largest first. */
    static String of(Outlook outlook, Optional<AwaitedPart> part) {
        String named = outlook.drivers().keySet().stream()
                .filter(cause -> outlook.share(cause) >= WORTH_NAMING)
                .sorted(Comparator.comparing((Cause cause) -> -outlook.share(cause)))
                .limit(NAMED)
                .map(cause -> into(outlook, cause, part.filter(missing -> cause == Cause.PARTS)))
                .collect(Collectors.joining(", "));
        return named.isEmpty() ? Words.of("line.forecastIntoNothing") : named;
    }

    private static String into(Outlook outlook, Cause cause, Optional<AwaitedPart> part) {
        String into = Words.of("line.forecastInto." + cause.name(), Math.round(100 * outlook.share(cause)));
        return part.map(missing ->
                        Words.of("line.forecastIntoPart", into, missing.what(), Formats.day(missing.expectedOn())))
                .orElse(into);
    }

    /** The part that it waits for longest; empty where it waits for none. */
    static Optional<AwaitedPart> part(LineForecast.Of one, List<TheLineNow.Post> posts) {
        return one.outlook().stages().stream()
                .filter(stage -> stage.meanMinutes().getOrDefault(Cause.PARTS, 0.0) > 0)
                .max(Comparator.comparing(stage -> stage.meanMinutes().get(Cause.PARTS)))
                .flatMap(stage ->
                        one.vehicle().needs().latest(posts.get(stage.stage()).stage()));
    }

    /** Of the stages before it the one with the thinnest record decides. */
    static String basis(List<Basis> stages) {
        if (stages.isEmpty()) {
            return Words.of("line.forecastBasisNone");
        }
        long planned =
                stages.stream().filter(one -> one.ground() == Ground.PLANNED).count();
        if (planned > 0) {
            return Words.of("line.forecastBasisPlanned", planned, stages.size());
        }
        boolean own = stages.stream().allMatch(one -> one.ground() == Ground.OWN);
        int fewest = stages.stream()
                .mapToInt(own ? Basis::ofKind : Basis::ofStage)
                .min()
                .orElse(0);
        return Words.of(own ? "line.forecastBasisOwn" : "line.forecastBasisPooled", fewest);
    }
}
