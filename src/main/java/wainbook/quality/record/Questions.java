package wainbook.quality.record;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.QuestionAnswered;
import wainbook.quality.QualitySaying.QuestionSettled;
import wainbook.quality.reading.AllReadings;
import wainbook.quality.reading.Reading;
import wainbook.works.shift.WorksDay;

/**
 * The questions of the works: those to a person, and those that came to the quality engineer. They are worked out of the record
 * when somebody looks, and kept until it grows; nothing is written to ask, and recording an entry costs nothing.
 */
@ApplicationScoped
public class Questions {

    /** Working days that a person has before a question goes on. */
    static final int WORKING_DAYS = 2;

    private record Worked(List<Reading> of, boolean byPerson, LocalDate day, List<Question> questions) {}

    private final AllReadings readings;
    private final Agreeing agreeing;
    private final Ledger ledger;
    private final WorksDay day;
    private final AtomicReference<Worked> worked =
            new AtomicReference<>(new Worked(List.of(), false, LocalDate.MIN, List.of()));

    Questions(AllReadings readings, Agreeing agreeing, Ledger ledger, WorksDay day) {
        this.readings = readings;
        this.agreeing = agreeing;
        this.ledger = ledger;
        this.day = day;
    }

    /** To a person about their own entries, newest first; statistics only while the works agrees to them. */
    public List<Standing> to(String person, Instant now) {
        return all(now).stream()
                .filter(one -> one.question().person().equals(person))
                .toList();
    }

    /** Those that a quality engineer settles, newest first; drawn from a person's statistics only if named as reader. */
    public List<Standing> withQuality(String reader, Instant now) {
        boolean reads =
                agreeing.at(now).map(agreement -> agreement.lets(reader)).orElse(false);
        return all(now).stream()
                .filter(one -> one.withQuality(now))
                .filter(one -> reads || !one.question().rule().statistic())
                .toList();
    }

    Optional<Standing> named(UUID id, Instant now) {
        return all(now).stream().filter(one -> one.question().id().equals(id)).findFirst();
    }

    private List<Standing> all(Instant now) {
        History works = ledger.history(Subject.works());
        Map<UUID, Entry> answered = by(works, QuestionAnswered.class, QuestionAnswered::question);
        Map<UUID, Entry> settled = by(works, QuestionSettled.class, QuestionSettled::question);
        return asked(now).stream()
                .map(question -> new Standing(
                        question,
                        Optional.ofNullable(answered.get(question.id())),
                        Optional.ofNullable(settled.get(question.id())),
                        toQualityAt(question.since())))
                .sorted((one, other) ->
                        other.question().since().compareTo(one.question().since()))
                .toList();
    }

    private static <S extends Saying> Map<UUID, Entry> by(History works, Class<S> kind, Function<S, UUID> question) {
        return works.saying(kind)
                .collect(Collectors.toMap(
                        entry -> question.apply(kind.cast(entry.saying())), entry -> entry, (one, other) -> other));
    }

    private List<Question> asked(Instant now) {
        List<Reading> record = readings.recordedAtOnce();
        boolean byPerson = agreeing.at(now).isPresent();
        LocalDate today = day.of(now);
        Worked known = worked.get();
        if (known.of() != record || known.byPerson() != byPerson || !known.day().equals(today)) {
            known = new Worked(record, byPerson, today, Unlikely.over(record, day.zone(), byPerson, now));
            worked.set(known);
        }
        return known.questions();
    }

    /** The end of the second working day after the day it was asked on; ten days on where no day is worked. */
    private Instant toQualityAt(Instant since) {
        LocalDate date = day.of(since);
        int worked = 0;
        for (int later = 1; later <= 10; later++) {
            Instant begin = day.endOf(date.plusDays(later - 1L));
            Instant end = day.endOf(date.plusDays(later));
            worked += day.workingMinutes(begin, end) > 0 ? 1 : 0;
            if (worked == WORKING_DAYS) {
                return end;
            }
        }
        return day.endOf(date.plusDays(10));
    }
}
