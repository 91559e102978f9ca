package wainbook.paper;

import jakarta.enterprise.context.ApplicationScoped;
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
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.paper.PaperSaying.FormsPrinted;

/** Gives out numbers: to a run of blank forms, or to a form for each of some vehicles. */
@ApplicationScoped
public class Printing {

    /** What is put into folders at once at most. */
    public static final int MOST = 50;

    /** Blank forms for the folder of a station. */
    public record ToPrintBlank(UUID id, Sort sort, int count) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return FormsPrinted.class;
        }
    }

    /** A form for each of these vehicles, as it stands now. */
    public record ToPrintFor(UUID id, Sort sort, List<String> vehicles) implements Asked {
        public ToPrintFor {
            vehicles = List.copyOf(vehicles);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return FormsPrinted.class;
        }
    }

    private final Ledger ledger;

    Printing(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> print(ToPrintBlank asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            if (asked.count() < 1 || asked.count() > MOST) {
                against.add(
                        Reason.of("paper.countWrong", Reason.WORKS_RULE, MOST).liftedAt("#count"));
            }
            if (!asked.sort().blank()) {
                against.add(Reason.of("paper.notBlank", Reason.WORKS_RULE).liftedAt("#sort"));
            }
            int first = PaperForms.of(reading.of(Subject.works())).next();
            return against.isEmpty()
                    ? Decision.say(
                            Subject.works(),
                            new FormsPrinted(first, asked.count(), asked.sort(), Optional.empty(), Optional.empty()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> print(ToPrintFor asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            var said = new ArrayList<FormsPrinted>();
            int next = PaperForms.of(reading.of(Subject.works())).next();
            for (String vehicle : asked.vehicles()) {
                Optional<History> history = InWorks.vehicle(ledger, vehicle);
                if (history.isEmpty()) {
                    against.add(Reason.of("paper.noVehicle", Reason.WORKS_RULE, vehicle)
                            .liftedAt("#vehicle"));
                }
                history.ifPresent(known -> said.add(new FormsPrinted(
                        next + said.size(), 1, asked.sort(), Optional.of(vehicle), Optional.of(known.number()))));
            }
            if (asked.vehicles().isEmpty() || asked.vehicles().size() > 10 * MOST) {
                against.add(Reason.of("paper.noVehicles", Reason.WORKS_RULE).liftedAt("#vehicle"));
            }
            return against.isEmpty() ? all(said) : Decision.refuse(against);
        });
    }

    private static Decision all(List<FormsPrinted> said) {
        Decision decision = Decision.say(Subject.works(), said.get(0));
        for (FormsPrinted next : said.subList(1, said.size())) {
            decision = decision.andSay(Subject.works(), next);
        }
        return decision;
    }
}
