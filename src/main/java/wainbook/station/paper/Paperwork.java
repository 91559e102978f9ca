package wainbook.station.paper;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Decision;
import wainbook.ledger.Decision.Line;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.WorkOrder;
import wainbook.page.Form;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.entry.AgainstSaid;
import wainbook.station.entry.FormReply;
import wainbook.station.entry.Recording;
import wainbook.station.work.Work;
import wainbook.station.work.Workplace;

/**
 * Check items on paper: what a sheet for them shows, and what becomes of it when it was filled in. Each line is judged as
 * {@link Recording} judges a live one, but by person and instrument as they stood when the paper says it was done.
 */
@ApplicationScoped
public class Paperwork {

    /** The paper that lines come from, and the two people who brought them over. */
    public record Source(String form, EvidenceFile photograph, String transcribedBy, String comparedBy) {}

    private final Workplace workplace;
    private final Releases releases;
    private final AgainstSaid against;

    Paperwork(Workplace workplace, Releases releases, AgainstSaid against) {
        this.workplace = workplace;
        this.releases = releases;
        this.against = against;
    }

    /** What is open at the vehicle’s present stage; empty where it stands at none. */
    public List<PaperItem> open(History vehicle) {
        return WorkOrder.of(vehicle)
                .flatMap(order -> order.stage().flatMap(stage -> workplace.record(vehicle, order, stage)))
                .map(StageRecord::unsettled)
                .orElse(List.of())
                .stream()
                .map(state -> PaperItem.of(state, joint(state)))
                .toList();
    }

    private Optional<Joint> joint(ItemState state) {
        return state.item().joint().flatMap(releases::joint);
    }

    /**
     * What the lines leave in the vehicle’s stream, one after the other as they were done; or everything that stands against
     * taking them, and then none is taken.
     */
    public Outcome<List<Saying>> judge(History vehicle, Source source, List<PaperLine> lines, Instant now) {
        var said = new ArrayList<Saying>();
        var against = new ArrayList<Reason>();
        History sofar = vehicle;
        for (PaperLine line :
                lines.stream().sorted(Comparator.comparing(PaperLine::doneAt)).toList()) {
            Decision decision = line(sofar, source, line, now);
            against.addAll(decision.reasons());
            for (Line next : decision.lines()) {
                said.add(next.saying());
                sofar = and(sofar, next.saying(), source.comparedBy(), now);
            }
        }
        return against.isEmpty()
                ? Outcome.done(List.copyOf(said))
                : Outcome.refused(against.stream().distinct().toList());
    }

    /** As it would be if it were said; nobody keeps it. */
    private static History and(History sofar, Saying saying, String who, Instant now) {
        return sofar.and(
                new Entry(UUID.randomUUID(), sofar.subject(), sofar.number() + 1, Moment.of(who, now), "", saying));
    }

    private Decision line(History vehicle, Source source, PaperLine line, Instant now) {
        return workplace
                .onPaper(vehicle, Moment.of(line.doer(), line.doneAt()), now, line.item(), line.instrument())
                .fold(work -> decide(work, source, line), Decision::refuse);
    }

    private Decision decide(Work work, Source source, PaperLine line) {
        List<Reason> vehicle = work.guards().vehicle();
        if (!vehicle.isEmpty()) {
            return Decision.refuse(vehicle);
        }
        if (!PaperItem.takable(work.state())) {
            return Decision.refuse(Reason.of("station.notFromPaper", Reason.WORKS_RULE, line.item()));
        }
        FormReply read = FormReply.of(work.state().item().asks(), work.guards().joint(), line.byName());
        if (!read.form().right()) {
            return Decision.refuse(unreadable(line, read.form()));
        }
        List<Reason> counting = work.guards().counting();
        Decision decision = counting.isEmpty()
                ? judged(work, read.reply())
                : Recording.landed(
                        work.history().subject(),
                        work,
                        Decision.say(
                                work.history().subject(),
                                new Observed(
                                        work.about(),
                                        read.reply().figures(),
                                        counting.stream().map(Reason::key).toList())));
        return decision.reasons().isEmpty() ? marked(decision, work, source, line) : decision;
    }

    private Decision judged(Work work, Reply reply) {
        Subject subject = work.history().subject();
        return work.judge(reply)
                .fold(
                        saying -> against.of(saying, work)
                                .map(Decision::refuse)
                                .orElseGet(() -> Recording.say(subject, work, saying)),
                        faults -> Decision.refuse(faults.stream()
                                .map(fault ->
                                        new Reason(fault.key(), fault.arguments(), fault.source(), Optional.empty()))
                                .toList()));
    }

    private static Decision marked(Decision decision, Work work, Source source, PaperLine line) {
        Subject subject = work.history().subject();
        Decision marked = Decision.say(
                subject,
                new TakenFromPaper(
                        source.form(),
                        source.photograph(),
                        line.doer(),
                        line.doneAt(),
                        source.transcribedBy(),
                        source.comparedBy(),
                        work.about()));
        for (Line next : decision.lines()) {
            marked = marked.andSay(subject, next.saying());
        }
        return marked;
    }

    private static List<Reason> unreadable(PaperLine line, Form form) {
        return form.faults().stream()
                .map(fault -> Reason.of(
                        "station.paperUnreadable", Reason.WORKS_RULE, line.item(), fault.field(), fault.text()))
                .toList();
    }
}
