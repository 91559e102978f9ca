package wainbook.setup.taking;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.taking.OnRecord.KnownName;

/** A works on record that needs no database: files are taken into it, and things happen to it. */
final class Book {

    static final Instant FIRST = Instant.parse("2026-03-02T07:00:00Z");

    private final Map<Subject, History> streams = new LinkedHashMap<>();
    private final Map<String, KnownName> names = new HashMap<>();
    private Instant now = FIRST;

    static Book of(WorksFiles files) {
        var book = new Book();
        book.take(files);
        return book;
    }

    OnRecord record() {
        return new OnRecord(
                streams.getOrDefault(Subject.works(), History.empty(Subject.works())),
                streams.values().stream()
                        .filter(history -> history.subject().sort() != Subject.Sort.WORKS)
                        .toList(),
                names,
                now);
    }

    Preview preview(WorksFiles files) {
        return preview(files, "setup", true);
    }

    Preview preview(WorksFiles files, String who, boolean administrator) {
        return Preview.of(record(), files, new Asker(Actor.of(who, Clock.fixed(now, ZoneOffset.UTC)), administrator));
    }

    List<Decision.Line> take(WorksFiles files) {
        Preview preview = preview(files);
        List<Decision.Line> lines = new ToSay(
                        record(), preview.wanted(), preview.differences(), person -> "hash of " + person.name())
                .lines();
        lines.forEach(line -> say(line.subject(), line.saying()));
        for (Lines.Person person : files.people()) {
            names.put(person.number(), new KnownName(Optional.of(person.user()), Optional.of(person.name())));
        }
        return lines;
    }

    void say(Subject subject, Saying saying) {
        History history = streams.getOrDefault(subject, History.empty(subject));
        streams.put(
                subject,
                history.and(new Entry(
                        UUID.randomUUID(), subject, history.number() + 1, Moment.of("setup", now), "hash", saying)));
    }

    void later(long days) {
        now = now.plusSeconds(days * 86_400);
    }
}
