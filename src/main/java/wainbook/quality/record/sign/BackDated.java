package wainbook.quality.record.sign;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Made;

/** The device that an entry came from was minutes away from the works' clock: typed later than read, or a clock set wrong. */
public final class BackDated {

    private static final Duration MOST = Duration.ofMinutes(5);

    private BackDated() {}

    public static Optional<Question> in(Made made) {
        return made.deviceAt()
                .map(device -> Duration.between(device, made.at()))
                .filter(apart -> apart.abs().compareTo(MOST) > 0)
                .map(apart -> new Question(
                        Rule.BACK_DATED,
                        made.person(),
                        List.of(made.readings().get(0)),
                        made.at(),
                        List.of(String.valueOf(apart.abs().toMinutes())),
                        1));
    }
}
