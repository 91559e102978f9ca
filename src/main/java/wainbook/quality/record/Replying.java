package wainbook.quality.record;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.Answer;
import wainbook.quality.QualitySaying.QuestionAnswered;
import wainbook.quality.QualitySaying.QuestionSettled;
import wainbook.quality.reading.Reading;

/** Takes the answer of the person who was asked, and what a quality engineer settles. Neither changes an entry. */
@ApplicationScoped
public class Replying {

    /** An answer; each question takes one, so its id follows from the question. */
    public record ToAnswer(UUID id, UUID question, Answer answer, String words) implements Asked {
        public static ToAnswer of(UUID question, Answer answer, String words) {
            return new ToAnswer(derived("answer", question), question, answer, words);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return QuestionAnswered.class;
        }
    }

    /** A settlement; each question takes one. */
    public record ToSettle(UUID id, UUID question, String words) implements Asked {
        public static ToSettle of(UUID question, String words) {
            return new ToSettle(derived("settlement", question), question, words);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return QuestionSettled.class;
        }
    }

    private final Ledger ledger;
    private final Questions questions;

    Replying(Ledger ledger, Questions questions) {
        this.ledger = ledger;
        this.questions = questions;
    }

    private static UUID derived(String what, UUID question) {
        return UUID.nameUUIDFromBytes((what + "/" + question).getBytes(StandardCharsets.UTF_8));
    }

    public Outcome<Entry> answer(ToAnswer asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<Question> question = questions
                    .named(asked.question(), reading.moment().at())
                    .map(Standing::question)
                    .filter(one -> one.person().equals(actor.who()));
            if (question.isEmpty()) {
                return Decision.refuse(Reason.of("quality.notYourQuestion", Reason.WORKS_RULE));
            }
            boolean wordy = !asked.words().isBlank();
            if ((asked.answer() == Answer.SOMETHING_ELSE && !wordy)
                    || asked.words().length() > 2000) {
                return Decision.refuse(
                        Reason.of("quality.wordsMissing", Reason.WORKS_RULE).liftedAt("#words"));
            }
            return Decision.say(
                    Subject.works(),
                    new QuestionAnswered(
                            asked.question(),
                            question.get().rule().name(),
                            entries(question.get()),
                            question.get().figures(),
                            asked.answer(),
                            wordy ? Optional.of(asked.words()) : Optional.empty()));
        });
    }

    public Outcome<Entry> settle(ToSettle asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<Question> question = questions
                    .withQuality(actor.who(), reading.moment().at())
                    .stream()
                    .map(Standing::question)
                    .filter(one -> one.id().equals(asked.question()))
                    .findFirst();
            if (question.isEmpty()) {
                return Decision.refuse(Reason.of("quality.notWithQuality", Reason.WORKS_RULE));
            }
            if (asked.words().isBlank() || asked.words().length() > 2000) {
                return Decision.refuse(
                        Reason.of("quality.wordsMissing", Reason.WORKS_RULE).liftedAt("#words"));
            }
            return Decision.say(
                    Subject.works(),
                    new QuestionSettled(
                            asked.question(),
                            question.get().rule().name(),
                            entries(question.get()),
                            question.get().figures(),
                            asked.words()));
        });
    }

    private static List<UUID> entries(Question question) {
        return question.entries().stream().map(Reading::entry).toList();
    }
}
