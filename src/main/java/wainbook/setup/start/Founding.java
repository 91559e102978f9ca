package wainbook.setup.start;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import wainbook.setup.files.Lines;
import wainbook.setup.password.NewPassword;
import wainbook.setup.taking.Names;
import wainbook.works.Role;
import wainbook.works.WorksSaying;

/** Begins a works: its name, its zone, and the administrator, who does the rest. Once. */
@ApplicationScoped
public class Founding {

    private static final int LONGEST_S = 30;
    private static final int LONGEST_TITLE = 200;
    private static final int LONGEST_USER = 80;

    /** The works to be, and who administers it. */
    public record ToFound(UUID id, String title, String zone, Lines.Person administrator) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works(), Subject.person(administrator.number()));
        }

        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.Named.class;
        }
    }

    private final Ledger ledger;
    private final Names names;

    Founding(Ledger ledger, Names names) {
        this.ledger = ledger;
        this.names = names;
    }

    public Outcome<Entry> found(ToFound asked, String password, Actor actor) {
        List<Reason> against = against(asked);
        against.addAll(NewPassword.against(password));
        if (!against.isEmpty()) {
            return Outcome.refused(against);
        }
        Lines.Person person = asked.administrator();
        String salt = names.salt();
        return ledger.together(LONGEST_S, () -> {
            Outcome<Entry> outcome = ledger.write(
                    asked,
                    actor,
                    reading -> reading.of(Subject.works()).isEmpty()
                            ? Decision.say(Subject.works(), new WorksSaying.Named(asked.title(), asked.zone()))
                                    .andSay(
                                            Subject.person(person.number()),
                                            new WorksSaying.Engaged(
                                                    Names.hash(salt, person.name()), List.of(Role.ADMINISTRATOR)))
                            : Decision.refuse(Reason.of("setup.worksThere", Reason.WORKS_RULE)));
            if (outcome instanceof Outcome.Done) {
                names.keep(List.of(person), Map.of(person.number(), salt), password);
            }
            return outcome;
        });
    }

    private static List<Reason> against(ToFound asked) {
        List<Reason> against = new ArrayList<>();
        text(against, "title", asked.title(), LONGEST_TITLE);
        try {
            ZoneId.of(asked.zone());
        } catch (DateTimeException unknown) {
            against.add(Reason.of("setup.zoneUnknown", Reason.WORKS_RULE, asked.zone())
                    .liftedAt("#zone"));
        }
        if (!asked.administrator().number().matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            against.add(Reason.of(
                            "setup.numberForm",
                            Reason.WORKS_RULE,
                            asked.administrator().number())
                    .liftedAt("#number"));
        }
        text(against, "user", asked.administrator().user(), LONGEST_USER);
        text(against, "name", asked.administrator().name(), LONGEST_TITLE);
        return against;
    }

    private static void text(List<Reason> against, String field, String typed, int longest) {
        if (typed.isBlank() || typed.length() > longest) {
            against.add(
                    Reason.of("setup.textMissing", Reason.WORKS_RULE, longest).liftedAt("#" + field));
        }
    }
}
