package wainbook.paper;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.paper.OnPaperSaying.PaperEnded;
import wainbook.isolation.paper.OnPaperSaying.PaperInUse;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.paper.PaperForm.State;
import wainbook.paper.PaperSaying.FormInUse;
import wainbook.paper.PaperSaying.FormSpoiled;
import wainbook.paper.PaperSaying.UseEnded;

/**
 * Says that a form is in use at a vehicle, which is never refused; that it is not, which takes an authorised person; or that it
 * was spoiled.
 */
@ApplicationScoped
public class Using {

    private static final int LONGEST = 400;

    /** That a form is in use: as often, and at as many vehicles, as anybody says so. */
    public record ToNote(UUID id, int form, String vehicle) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works(), Subject.workOrder(vehicle));
        }

        @Override
        public Class<? extends Saying> says() {
            return FormInUse.class;
        }
    }

    /** That it is not in use there, and how one knows. */
    public record ToEnd(UUID id, int form, String vehicle, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works(), Subject.workOrder(vehicle));
        }

        @Override
        public Class<? extends Saying> says() {
            return UseEnded.class;
        }
    }

    /** That a form cannot be used any more, and why. */
    public record ToSpoil(UUID id, int form, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return FormSpoiled.class;
        }
    }

    private final Ledger ledger;
    private final FactsNow factsNow;

    Using(Ledger ledger, FactsNow factsNow) {
        this.ledger = ledger;
        this.factsNow = factsNow;
    }

    public Outcome<Entry> note(ToNote asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<PaperForm> form =
                    PaperForms.of(reading.of(Subject.works())).number(asked.form());
            Subject vehicle = Subject.workOrder(asked.vehicle());
            if (form.isEmpty()) {
                return Decision.refuse(noSuchForm(asked.form()));
            }
            if (WorkOrder.of(reading.of(vehicle)).isEmpty()) {
                return Decision.refuse(Reason.of("paper.noVehicle", Reason.WORKS_RULE, asked.vehicle())
                        .liftedAt("#vehicle"));
            }
            Decision noted = Decision.say(Subject.works(), new FormInUse(asked.form(), asked.vehicle()));
            return form.get().sort() == Sort.ISOLATION
                    ? noted.andSay(vehicle, new PaperInUse(form.get().code()))
                    : noted;
        });
    }

    public Outcome<Entry> end(ToEnd asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<PaperForm> form =
                    PaperForms.of(reading.of(Subject.works())).number(asked.form());
            List<Reason> against = form.map(known -> againstEnding(known, reading.moment()))
                    .orElseGet(() -> List.of(noSuchForm(asked.form())));
            List<Reason> all = new ArrayList<>(against);
            all.addAll(words(asked.reason()));
            if (form.filter(known -> !known.usedAt().contains(asked.vehicle()) && known.state() != State.IN_USE)
                    .isPresent()) {
                all.add(Reason.of(
                        "paper.notInUse", Reason.WORKS_RULE, form.get().code(), asked.vehicle()));
            }
            return all.isEmpty() ? ended(asked, form.orElseThrow()) : Decision.refuse(all);
        });
    }

    private static Decision ended(ToEnd asked, PaperForm form) {
        Decision ended = Decision.say(Subject.works(), new UseEnded(asked.form(), asked.vehicle(), asked.reason()));
        return form.sort() == Sort.ISOLATION
                ? ended.andSay(Subject.workOrder(asked.vehicle()), new PaperEnded(form.code(), asked.reason()))
                : ended;
    }

    /** What bars this person from it; asked before a form is drawn. An isolation is ended by somebody authorised for it. */
    public List<Reason> againstEnding(PaperForm form, Moment now) {
        boolean authorised = factsNow.person(now.who(), now.at()).levelAt(now.at()) >= 2;
        return form.sort() == Sort.ISOLATION && !authorised
                ? List.of(Reason.of("paper.notAuthorised", Reason.WORKS_RULE, form.code()))
                : List.of();
    }

    public Outcome<Entry> spoil(ToSpoil asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<PaperForm> form =
                    PaperForms.of(reading.of(Subject.works())).number(asked.form());
            if (form.isEmpty()) {
                return Decision.refuse(noSuchForm(asked.form()));
            }
            var against = new ArrayList<>(words(asked.reason()));
            if (form.get().state() != State.BLANK) {
                against.add(Reason.of(
                        "paper.notToSpoil", Reason.WORKS_RULE, form.get().code()));
            }
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new FormSpoiled(asked.form(), asked.reason()))
                    : Decision.refuse(against);
        });
    }

    private static Reason noSuchForm(int form) {
        return Reason.of("paper.noSuchForm", Reason.WORKS_RULE, PaperForm.code(form))
                .liftedAt("/paper");
    }

    private static List<Reason> words(String reason) {
        return reason == null || reason.isBlank() || reason.length() > LONGEST
                ? List.of(Reason.of("paper.reasonMissing", Reason.WORKS_RULE, LONGEST)
                        .liftedAt("#reason"))
                : List.of();
    }
}
