package wainbook.quality.record;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
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
import wainbook.quality.QualitySaying.StatisticsAgreed;
import wainbook.quality.QualitySaying.StatisticsEnded;
import wainbook.works.PersonName;
import wainbook.works.shift.WorksDay;

/** Records that the works has agreed to statistics by person, until when, and who may see them; and ends it. */
@ApplicationScoped
public class Agreeing {

    /** No agreement is recorded for longer: it is to be made anew. */
    private static final int MOST_YEARS = 2;

    /** What is asked. */
    public record ToAgree(UUID id, String document, List<String> readers, LocalDate until) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return StatisticsAgreed.class;
        }
    }

    /** Statistics by person end now. */
    public record ToEnd(UUID id, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return StatisticsEnded.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;

    Agreeing(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Optional<Agreement> latest() {
        return Agreement.of(ledger.history(Subject.works()));
    }

    /** The agreement that holds at a time; without one there are no statistics by person. */
    public Optional<Agreement> at(Instant now) {
        return latest().filter(agreement -> agreement.holdsOn(day.of(now)));
    }

    public Outcome<Entry> agree(ToAgree asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            List<Reason> against = against(asked, day.of(reading.moment().at()));
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(), new StatisticsAgreed(asked.document(), asked.readers(), asked.until()))
                    : Decision.refuse(against);
        });
    }

    private static List<Reason> against(ToAgree asked, LocalDate today) {
        var against = new ArrayList<Reason>();
        if (asked.document().isBlank() || asked.document().length() > 200) {
            against.add(Reason.of("quality.documentMissing", Reason.WORKS_RULE).liftedAt("#document"));
        }
        if (asked.readers().isEmpty()) {
            against.add(Reason.of("quality.readersMissing", Reason.WORKS_RULE).liftedAt("#readers"));
        }
        asked.readers().stream()
                .filter(number -> PersonName.of(number).isEmpty())
                .findFirst()
                .ifPresent(number -> against.add(Reason.of("quality.readerUnknown", Reason.WORKS_RULE, number)
                        .liftedAt("#readers")));
        if (asked.until().isBefore(today) || asked.until().isAfter(today.plusYears(MOST_YEARS))) {
            against.add(Reason.of("quality.untilWrong", Reason.WORKS_RULE, today, today.plusYears(MOST_YEARS))
                    .liftedAt("#until"));
        }
        return against;
    }

    public Outcome<Entry> end(ToEnd asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            if (Agreement.of(reading.of(Subject.works())).isEmpty()) {
                return Decision.refuse(Reason.of("quality.noAgreement", Reason.WORKS_RULE));
            }
            return asked.reason().isBlank() || asked.reason().length() > 2000
                    ? Decision.refuse(Reason.of("quality.reasonMissing", Reason.WORKS_RULE)
                            .liftedAt("#reason"))
                    : Decision.say(Subject.works(), new StatisticsEnded(asked.reason()));
        });
    }
}
