package wainbook.setup.taking;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.setup.SetupSaying;
import wainbook.setup.files.Change;
import wainbook.setup.files.Lines;
import wainbook.setup.files.Part;
import wainbook.setup.files.WorksFiles;

/** Takes the files of a works: all that they change in one transaction, or nothing. */
@ApplicationScoped
public class Taking {

    private static final int LONGEST_S = 120;

    /** The whole of it as the ledger is asked. */
    record Takes(UUID id, List<Subject> writes, String fingerprint) implements Asked {
        @Override
        public Class<? extends Saying> says() {
            return SetupSaying.FilesTaken.class;
        }
    }

    private final Ledger ledger;
    private final Records records;
    private final Names names;
    private final SecondPerson secondPerson;

    Taking(Ledger ledger, Records records, Names names, SecondPerson secondPerson) {
        this.ledger = ledger;
        this.records = records;
        this.names = names;
        this.secondPerson = secondPerson;
    }

    /** What taking them would change now. */
    public Preview preview(WorksFiles files, Asker asker) {
        return Preview.of(records.now(), files, asker);
    }

    /** What the works would be made from again. */
    public WorksFiles givenOut() {
        return records.now().givenOut();
    }

    /** Whether the works has a process yet. */
    public boolean begun() {
        return records.now().hasProcess();
    }

    /** Begins a works that has nothing on record; {@code password} is everybody's, so this is for the demo alone. */
    public void begin(WorksFiles files, Asker setup, String password) {
        var asked = new ToTake(UUID.randomUUID(), files, preview(files, setup).fingerprint(), Optional.empty());
        take(asked, setup, password).fold(entry -> entry, reasons -> {
            throw new IllegalStateException("the works could not be begun: " + reasons);
        });
    }

    /** Takes them; whoever is new among the people cannot sign in until they are given a password. */
    public Outcome<Entry> take(ToTake asked, Asker asker) {
        return take(asked, asker, names.unknownPassword());
    }

    private Outcome<Entry> take(ToTake asked, Asker asker, String password) {
        // Looked at before anything is locked: checking a password is made to be slow.
        SecondPerson.Answer second = secondPerson.answer(asked.second(), asker.who());
        var takes = new Takes(asked.id(), records.writes(asked.files()), asked.fingerprint());
        return ledger.together(LONGEST_S, () -> {
            List<Lines.Person> people = new ArrayList<>();
            Map<String, String> salts = new HashMap<>();
            Outcome<Entry> outcome = ledger.write(takes, asker.actor(), reading -> {
                OnRecord record = records.of(reading::of, takes.writes());
                Preview preview = Preview.of(record, asked.files(), asker);
                List<Reason> against = against(asked, preview, second);
                if (!against.isEmpty()) {
                    return Decision.refuse(against);
                }
                people.addAll(touched(preview, salts));
                return decision(record, preview, salts, second);
            });
            if (outcome instanceof Outcome.Done) {
                names.keep(people, salts, password);
            }
            return outcome;
        });
    }

    private static List<Reason> against(ToTake asked, Preview preview, SecondPerson.Answer second) {
        List<Reason> against = new ArrayList<>(preview.reasons());
        if (preview.differences().nothing()) {
            against.add(Reason.of("setup.nothingToTake", Reason.WORKS_RULE));
        } else if (!preview.fingerprint().equals(asked.fingerprint())) {
            against.add(Reason.of("setup.changedSince", Reason.WORKS_RULE));
        }
        if (preview.needsSecond()) {
            against.addAll(second.reasons());
        }
        return against;
    }

    /** The people whose line changes, with a salt for every name that is new. */
    private List<Lines.Person> touched(Preview preview, Map<String, String> salts) {
        List<Lines.Person> touched = new ArrayList<>();
        for (Lines.Person line : preview.wanted().people()) {
            Optional<Change> change = preview.differences().written(Part.PEOPLE, line.number());
            change.ifPresent(known -> {
                touched.add(line);
                if (known.sort() == Change.Sort.ADDED || known.touches("name")) {
                    salts.put(line.number(), names.salt());
                }
            });
        }
        return touched;
    }

    private static Decision decision(
            OnRecord record, Preview preview, Map<String, String> salts, SecondPerson.Answer second) {
        Decision decision = Decision.say(
                Subject.works(),
                new SetupSaying.FilesTaken(
                        preview.fingerprint(),
                        preview.differences().written().size(),
                        preview.needsSecond() ? second.person() : Optional.empty()));
        var toSay = new ToSay(
                record,
                preview.wanted(),
                preview.differences(),
                person -> Names.hash(salts.get(person.number()), person.name()));
        List<Decision.Line> lines = new ArrayList<>(decision.lines());
        lines.addAll(toSay.lines());
        return new Decision(lines, List.of());
    }
}
