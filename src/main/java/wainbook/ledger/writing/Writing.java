package wainbook.ledger.writing;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.hibernate.LockMode;
import org.hibernate.StatelessSession;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Kinds;
import wainbook.ledger.Reading;
import wainbook.ledger.Subject;
import wainbook.ledger.bytes.Said;
import wainbook.ledger.store.EntryRow;
import wainbook.ledger.store.Histories;
import wainbook.ledger.store.StreamHead;

/** The statements of one writing: locks the ends of streams, and adds to them. */
@ApplicationScoped
public class Writing {

    /** How far the server's clock may lie behind the last entry before writing is refused. */
    static final Duration CLOCK_TOLERANCE = Duration.ofSeconds(2);

    /** The ends of the streams under lock, and what was read of them; or why nothing can be written now. */
    public record Locked(Reading reading, Map<Subject, StreamHead> heads, Optional<Reason> refusal) {}

    private final StatelessSession session;
    private final Histories histories;

    Writing(StatelessSession session, Histories histories) {
        this.session = session;
        this.histories = histories;
    }

    public Locked lock(Asked asked, Actor actor) {
        var heads = new HashMap<Subject, StreamHead>();
        asked.writes().stream()
                .distinct()
                .sorted(Comparator.comparing(Subject::stream))
                .forEach(subject -> Optional.ofNullable(
                                session.get(StreamHead.class, subject.stream(), LockMode.PESSIMISTIC_WRITE))
                        .ifPresent(head -> heads.put(subject, head)));
        Instant now = actor.clock().instant();
        Instant last = heads.values().stream()
                .map(head -> head.lastAt)
                .max(Comparator.naturalOrder())
                .orElse(now);
        var read = new HashMap<Subject, History>();
        asked.writes()
                .forEach(subject -> read.put(
                        subject,
                        Optional.ofNullable(heads.get(subject))
                                .map(head -> histories.upTo(head, subject))
                                .orElseGet(() -> History.empty(subject))));
        var reading = new Reading(actor.at(now.isBefore(last) ? last : now), read);
        Optional<Reason> refusal = now.plus(CLOCK_TOLERANCE).isBefore(last)
                ? Optional.of(Reason.of("ledger.clockBehind", Reason.WORKS_RULE, now, last))
                : Optional.empty();
        return new Locked(reading, heads, refusal);
    }

    public List<Entry> append(Asked asked, Locked locked, Decision decision) {
        if (!decision.lines().get(0).subject().equals(asked.writes().get(0))) {
            throw new IllegalArgumentException(
                    "the first line must be about " + asked.writes().get(0)
                            + ", where a retry looks for it; not about "
                            + decision.lines().get(0).subject());
        }
        var entries = new ArrayList<Entry>();
        Map<Subject, StreamHead> ends = ends(locked, decision);
        for (Decision.Line line : decision.lines()) {
            StreamHead end = ends.get(line.subject());
            UUID id = entries.isEmpty() ? asked.id() : following(asked.id(), entries.size());
            var said = Said.of(
                    id,
                    line.subject(),
                    end.lastNumber + 1,
                    end.lastHash,
                    locked.reading().moment(),
                    line.saying());
            Entry entry = insert(said, line);
            entries.add(entry);
            histories.adds(entry, locked.reading().of(line.subject()));
            end.lastNumber = said.number();
            end.lastHash = entry.hash();
            end.lastAt = said.at();
        }
        ends.values().forEach(session::update);
        return entries;
    }

    /** In ascending id, as locks are taken: two acts that open the same streams must not wait for each other. */
    private Map<Subject, StreamHead> ends(Locked locked, Decision decision) {
        var ends = new TreeMap<Subject, StreamHead>(Comparator.comparing(Subject::stream));
        decision.lines().stream()
                .map(Decision.Line::subject)
                .distinct()
                .sorted(ends.comparator())
                .forEach(subject -> ends.put(subject, end(locked, subject)));
        return ends;
    }

    private StreamHead end(Locked locked, Subject subject) {
        locked.reading().of(subject);
        return Optional.ofNullable(locked.heads().get(subject)).orElseGet(() -> {
            var head = new StreamHead();
            head.id = subject.stream();
            head.subject = subject.toString();
            head.lastHash = Said.NOTHING;
            head.lastAt = locked.reading().moment().at();
            session.insert(head);
            return head;
        });
    }

    private Entry insert(Said said, Decision.Line line) {
        var row = new EntryRow();
        row.id = said.id();
        row.stream = said.stream();
        row.number = said.number();
        row.kind = said.kind();
        row.said = said.text();
        row.hash = Said.hash(row.said);
        session.insert(row);
        var moment = new Moment(said.who(), said.at(), said.deviceAt(), said.station());
        return new Entry(said.id(), line.subject(), said.number(), moment, row.hash, Kinds.newest(line.saying()));
    }

    /** Further entries of one request get ids that follow from its own, so that a retry would make the same. */
    private static UUID following(UUID id, int index) {
        return UUID.nameUUIDFromBytes((id + "/" + index).getBytes(StandardCharsets.UTF_8));
    }
}
