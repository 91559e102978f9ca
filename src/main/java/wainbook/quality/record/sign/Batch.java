package wainbook.quality.record.sign;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Made;

/** Five entries of one person within seconds of each other, after an hour with none: perhaps typed from a note. */
public final class Batch {

    private static final int LEAST = 5;
    private static final Duration GAP = Duration.ofSeconds(10);
    private static final Duration SILENCE = Duration.ofHours(1);

    private final Map<String, List<Made>> running = new HashMap<>();

    /** @param before the same person's entry before */
    public Optional<Question> in(Made made, Optional<Made> before) {
        Duration gap =
                before.map(former -> Duration.between(former.at(), made.at())).orElse(SILENCE);
        List<Made> run = running.computeIfAbsent(made.person(), none -> new ArrayList<>());
        if (gap.compareTo(SILENCE) >= 0) {
            run.clear();
            run.add(made);
        } else if (gap.compareTo(GAP) < 0 && !run.isEmpty()) {
            run.add(made);
        } else {
            run.clear();
        }
        if (run.size() != LEAST) {
            return Optional.empty();
        }
        long seconds = Duration.between(run.get(0).at(), made.at()).toSeconds();
        return Optional.of(new Question(
                Rule.BATCH,
                made.person(),
                run.stream().map(one -> one.readings().get(0)).toList(),
                made.at(),
                List.of(String.valueOf(LEAST), String.valueOf(seconds)),
                1));
    }
}
