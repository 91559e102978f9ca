package wainbook.setup.taking;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.taking.OnRecord.KnownName;
import wainbook.works.PersonName;
import wainbook.works.signin.SignInRow;

/** Gathers what the works has on record. */
@ApplicationScoped
class Records {

    private final Ledger ledger;
    private final EntityManager tables;
    private final Clock clock;

    Records(Ledger ledger, EntityManager tables, Clock clock) {
        this.ledger = ledger;
        this.tables = tables;
        this.clock = clock;
    }

    /** The record as it stands now, for drawing. */
    OnRecord now() {
        return QuarkusTransaction.joiningExisting().call(() -> of(ledger::history, streams()));
    }

    /** The same from streams that are under lock. */
    OnRecord of(Function<Subject, History> reading, List<Subject> streams) {
        return new OnRecord(
                reading.apply(Subject.works()),
                streams.stream()
                        .filter(subject -> subject.sort() != Subject.Sort.WORKS)
                        .map(reading)
                        .toList(),
                names(),
                clock.instant());
    }

    /** All that taking these files may write; the works' own stream first. */
    List<Subject> writes(WorksFiles files) {
        Set<Subject> writes = new LinkedHashSet<>();
        writes.add(Subject.works());
        writes.addAll(QuarkusTransaction.joiningExisting().call(this::streams));
        files.people().forEach(line -> writes.add(Subject.person(line.number())));
        files.instruments().forEach(line -> writes.add(Subject.instrument(line.code())));
        files.sheets().forEach(sheet -> writes.add(Subject.checkSheet(sheet.code())));
        return List.copyOf(writes);
    }

    private List<Subject> streams() {
        List<Subject> streams = new ArrayList<>();
        for (Subject.Sort sort : List.of(Subject.Sort.PERSON, Subject.Sort.INSTRUMENT, Subject.Sort.CHECK_SHEET)) {
            tables.createQuery("select subject from StreamHead where subject like :sort order by subject", String.class)
                    .setParameter("sort", sort.word() + "/%")
                    .getResultList()
                    .forEach(subject -> streams.add(Subject.parse(subject)));
        }
        return streams;
    }

    private static Map<String, KnownName> names() {
        var names = new HashMap<String, KnownName>();
        PersonName.<PersonName>listAll()
                .forEach(row -> names.put(row.number, new KnownName(Optional.empty(), Optional.of(row.fullName))));
        SignInRow.<SignInRow>listAll()
                .forEach(row -> names.put(
                        row.person,
                        new KnownName(
                                Optional.of(row.userName),
                                Optional.ofNullable(names.get(row.person)).flatMap(KnownName::fullName))));
        return names;
    }
}
