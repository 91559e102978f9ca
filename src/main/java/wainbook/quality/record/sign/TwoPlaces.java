package wainbook.quality.record.sign;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Made;

/** One instrument, or one person, at two stations with less time between than the way takes. */
public final class TwoPlaces {

    /** Least time from one station to another: common practice, no source. */
    private static final Duration WAY = Duration.ofSeconds(60);

    private final Map<String, Made> last = new HashMap<>();

    public Optional<Question> in(Made made) {
        Optional<Question> person = apart(made, made.person());
        Optional<Question> tool = made.instrument().flatMap(code -> apart(made, code));
        return person.or(() -> tool);
    }

    /** @param whose number of the person or code of the instrument; no two are alike */
    private Optional<Question> apart(Made made, String whose) {
        Optional<Made> before = Optional.ofNullable(last.put(whose, made));
        return before.filter(
                        former -> former.station().isPresent() && made.station().isPresent())
                .filter(former -> !former.station().equals(made.station()))
                .filter(former -> Duration.between(former.at(), made.at()).compareTo(WAY) < 0)
                .map(former -> new Question(
                        Rule.TWO_PLACES,
                        made.person(),
                        List.of(former.readings().get(0), made.readings().get(0)),
                        made.at(),
                        List.of(
                                former.station().orElseThrow(),
                                made.station().orElseThrow(),
                                String.valueOf(
                                        Duration.between(former.at(), made.at()).toSeconds()),
                                whose),
                        1));
    }
}
