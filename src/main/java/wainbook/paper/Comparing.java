package wainbook.paper;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.step.ShownOnPaper;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.Holding;
import wainbook.page.Words;
import wainbook.paper.PaperSaying.Agreed;
import wainbook.paper.PaperSaying.SentBack;
import wainbook.paper.PaperSaying.Transcribed;
import wainbook.permit.PermitForm;
import wainbook.permit.PermitSaying;
import wainbook.permit.paper.PaperPermitRules;
import wainbook.permit.rule.Around;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;
import wainbook.station.paper.Paperwork;
import wainbook.station.paper.Paperwork.Source;

/**
 * The second person: compares what was typed in with the photograph, and agrees or sends it back. On agreement all of it
 * stands at the vehicle at once, or nothing of it.
 */
@ApplicationScoped
public class Comparing {

    private static final int LONGEST = 400;

    /** That photograph and transcription are the same. */
    public record ToAgree(UUID id, int form, int transcription, String vehicle) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works(), Subject.workOrder(vehicle));
        }

        @Override
        public Class<? extends Saying> says() {
            return Agreed.class;
        }
    }

    /** That they are not, and where. */
    public record ToSendBack(UUID id, int form, int transcription, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return SentBack.class;
        }
    }

    private final Ledger ledger;
    private final Paperwork paperwork;
    private final ShownOnPaper shown;
    private final Releases releases;
    private final Around around;

    Comparing(Ledger ledger, Paperwork paperwork, ShownOnPaper shown, Releases releases, Around around) {
        this.ledger = ledger;
        this.paperwork = paperwork;
        this.shown = shown;
        this.releases = releases;
        this.around = around;
    }

    public Outcome<Entry> agree(ToAgree asked, Actor actor) {
        Subject vehicle = Subject.workOrder(asked.vehicle());
        return ledger.write(asked, actor, reading -> {
            Optional<PaperForm> form =
                    PaperForms.of(reading.of(Subject.works())).number(asked.form());
            List<Reason> against = against(form, asked.form(), asked.transcription(), actor.who());
            if (!against.isEmpty()) {
                return Decision.refuse(against);
            }
            Entry waiting = form.orElseThrow().waiting().orElseThrow();
            if (!((Transcribed) waiting.saying()).vehicle().equals(asked.vehicle())) {
                return Decision.refuse(Reason.of(
                        "paper.nothingWaits", Reason.WORKS_RULE, form.get().code()));
            }
            return lands(reading.of(vehicle), waiting, reading.moment())
                    .fold(
                            sayings -> {
                                Decision agreed = Decision.say(
                                        Subject.works(),
                                        new Agreed(asked.form(), asked.transcription(), asked.vehicle()));
                                for (Saying next : sayings) {
                                    agreed = agreed.andSay(vehicle, next);
                                }
                                return agreed;
                            },
                            Decision::refuse);
        });
    }

    public Outcome<Entry> sendBack(ToSendBack asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<PaperForm> form =
                    PaperForms.of(reading.of(Subject.works())).number(asked.form());
            var against = new ArrayList<Reason>();
            boolean waits = form.flatMap(PaperForm::waiting)
                    .filter(entry -> ((Transcribed) entry.saying()).transcription() == asked.transcription())
                    .isPresent();
            if (!waits) {
                against.add(Reason.of("paper.nothingWaits", Reason.WORKS_RULE, PaperForm.code(asked.form())));
            }
            if (asked.reason() == null
                    || asked.reason().isBlank()
                    || asked.reason().length() > LONGEST) {
                against.add(Reason.of("paper.reasonMissing", Reason.WORKS_RULE, LONGEST)
                        .liftedAt("#reason"));
            }
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new SentBack(asked.form(), asked.transcription(), asked.reason()))
                    : Decision.refuse(against);
        });
    }

    /** What bars this person from agreeing; asked before a page is drawn. */
    public List<Reason> against(Optional<PaperForm> form, int number, int transcription, String who) {
        return form.map(known -> TranscribingRules.againstComparing(known, transcription, who))
                .orElseGet(() -> List.of(Reason.of("paper.noSuchForm", Reason.WORKS_RULE, PaperForm.code(number))
                        .liftedAt("/paper")));
    }

    /** What would stand at the vehicle if this moment’s person agreed now; or what stands against it. */
    public Outcome<List<Saying>> lands(History vehicle, Entry waiting, Moment now) {
        var said = (Transcribed) waiting.saying();
        var source = new Source(
                PaperForm.code(said.form()), said.photograph(), waiting.moment().who(), now.who());
        Written written = Written.of(said);
        if (written instanceof Written.Items items) {
            return paperwork.judge(vehicle, source, items.lines(), now.at());
        }
        return written instanceof Written.Isolation isolation
                ? isolation(vehicle, source, isolation.form())
                : Outcome.done(List.of(permit(source, ((Written.Permit) written).form())));
    }

    private Outcome<List<Saying>> isolation(History vehicle, Source source, IsolationForm form) {
        Optional<Plan> plan = WorkOrder.of(vehicle)
                .flatMap(order -> releases.planAt(order.ordered().variant(), form.begunAt()));
        if (plan.isEmpty()) {
            return Outcome.refused(Reason.of("isolating.noPlan", Reason.WORKS_RULE));
        }
        var paper = new OnPaper(
                source.form(),
                source.photograph(),
                plan.get(),
                form,
                shown.notShown(vehicle, form).stream()
                        .map(Reason::key)
                        .distinct()
                        .toList(),
                form.closed(),
                source.transcribedBy(),
                source.comparedBy());
        return Outcome.done(Stream.concat(Stream.of(paper), danger(vehicle, source, form).stream())
                .toList());
    }

    /** A reading above the danger limit holds the vehicle, as it does in the tool, until somebody has looked at it. */
    private static Optional<Saying> danger(History vehicle, Source source, IsolationForm form) {
        Limits limits = Limits.usual();
        boolean dangerous = form.touches().stream()
                .flatMap(touch -> touch.readings().stream())
                .anyMatch(read -> limits.dangerous(read.pair(), read.volt()));
        return dangerous
                ? Optional.of(new Held(
                        Holding.next(vehicle),
                        HoldKind.SAFETY,
                        List.of(Stops.WORK, Stops.SIGN, Stops.MOVE),
                        Words.of("paper.holdForVoltage", source.form())))
                : Optional.empty();
    }

    private PermitSaying.OnPaper permit(Source source, PermitForm form) {
        Instant issuedAt = form.issuedAt();
        return new PermitSaying.OnPaper(
                source.form(),
                source.photograph(),
                form,
                PaperPermitRules.remarks(form, around.latestEnd(issuedAt)),
                source.transcribedBy(),
                source.comparedBy());
    }
}
