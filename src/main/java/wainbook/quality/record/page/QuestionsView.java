package wainbook.quality.record.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Answer;
import wainbook.quality.reading.Reading;
import wainbook.quality.record.Agreement;
import wainbook.quality.record.Rule;
import wainbook.quality.record.Standing;
import wainbook.quality.record.Unlikely;

/**
 * A person's own questions, and for a quality engineer those that came to them.
 *
 * @param about the question that a form was sent for, with what was typed in it
 */
public record QuestionsView(
        List<One> own,
        List<One> withQuality,
        boolean quality,
        Optional<Agreement> agreement,
        Optional<UUID> about,
        Filled filled) {

    /** One question in words. */
    public record One(Standing standing) {

        public UUID id() {
            return standing.question().id();
        }

        public Rule rule() {
            return standing.question().rule();
        }

        public String title() {
            return rule().title();
        }

        public String working() {
            return Words.of(
                    "quality.seen." + rule().name(),
                    standing.question().figures().toArray());
        }

        public boolean byChance() {
            return standing.question().chance() < 1;
        }

        /** How seldom it comes where all is well, as people say it. */
        public String chance() {
            double times = 1 / standing.question().chance();
            return times > 1e6 ? Words.of("quality.lessThanOneIn") : Words.of("quality.oneIn", Math.round(times));
        }

        public List<Reading> entries() {
            return standing.question().entries();
        }

        public String answer() {
            return Words.of("quality.answer." + standing.answered().answer().name());
        }

        public String words() {
            return standing.answered().words().orElse("");
        }

        public boolean typedWrong() {
            return standing.answer().isPresent() && standing.answered().answer() == Answer.TYPED_WRONG;
        }

        List<String> cells() {
            return List.of(
                    id().toString(),
                    rule().name(),
                    standing.question().since().toString(),
                    entries().stream()
                            .map(one -> one.order() + "/" + one.number())
                            .reduce((one, other) -> one + " " + other)
                            .orElse(""),
                    working(),
                    standing.answer().isPresent() ? standing.answered().answer().name() : "",
                    standing.settlement().isPresent() ? standing.settledAs().words() : "");
        }
    }

    public List<Option> answers() {
        return Arrays.stream(Answer.values())
                .map(answer -> new Option(answer.name(), Words.of("quality.answer." + answer.name())))
                .toList();
    }

    /** The form of a question: as it came back, or a fresh one. */
    public Filled form(One one) {
        return about.filter(one.id()::equals).isPresent() ? filled : Filled.fresh();
    }

    public String stated() {
        return String.valueOf(Math.round(100 * Unlikely.STATED_FALSE_ALARMS));
    }

    public boolean none() {
        return own.isEmpty();
    }
}
