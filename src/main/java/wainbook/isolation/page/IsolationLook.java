package wainbook.isolation.page;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.Mentioned;
import wainbook.isolation.State;
import wainbook.isolation.Step;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.step.FactsNow;
import wainbook.isolation.step.TakeStep;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.Condition;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.shift.WorksDay;

/** Draws the page of an isolation by the same rules that its steps are judged by. */
@ApplicationScoped
class IsolationLook {

    /** A vehicle as the list of isolations shows it. */
    public record Standing(String order, String place, InWords words, int locks) {}

    private static final List<Step> ANY_TIME = List.of(
            Step.STOP,
            Step.REPORT_DANGER,
            Step.LOCK_ON,
            Step.LOCK_OFF,
            Step.OPEN_SOURCE,
            Step.HAND_BACK,
            Step.TAKE_OVER,
            Step.DECLARE_NO_SOURCE,
            Step.ISSUE_LIVE_PERMIT,
            Step.READ_PAPER,
            Step.REPORT_ABANDONED_LOCK,
            Step.REMOVE_ABANDONED_LOCK,
            Step.TELL_OWNER);

    private final Ledger ledger;
    private final FactsNow factsNow;
    private final TakeStep takeStep;
    private final WorksDay day;
    private final ObjectMapper json;

    IsolationLook(Ledger ledger, FactsNow factsNow, TakeStep takeStep, WorksDay day, ObjectMapper json) {
        this.ledger = ledger;
        this.factsNow = factsNow;
        this.takeStep = takeStep;
        this.day = day;
        this.json = json;
    }

    /** The vehicles on the line and in the bays, those that do not count as simply live first. */
    List<Standing> vehicles(Moment moment) {
        return Stream.of(Phase.ON_LINE, Phase.OFF_LINE)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .map(row -> {
                    History vehicle = ledger.history(Subject.workOrder(row.number));
                    InWords words = InWords.of(vehicle, moment.at(), moment.who(), new Formats(day.zone()));
                    return new Standing(
                            row.number,
                            String.valueOf(row.place),
                            words,
                            words.isolation().locks().size());
                })
                .sorted(java.util.Comparator.comparing(
                        one -> one.words().isolation().state() == State.LIVE
                                && one.words().onPaper().isEmpty()))
                .toList();
    }

    IsolationView at(String order, Moment moment, Optional<StepForms.SentBack> sentBack, Optional<Long> done) {
        History history = ledger.history(Subject.workOrder(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        Facts facts = factsNow.of(history, moment, everybodyAndEverything());
        Isolation now = Isolation.of(history).at(moment.at());
        var around = new Around(
                now,
                facts,
                moment.who(),
                moment.at(),
                InstrumentRow.register(),
                PersonInWords::name,
                new Formats(day.zone()));
        var forms = new StepForms(
                history,
                moment,
                around,
                sentBack,
                wanted -> takeStep.against(history, moment, facts, wanted),
                day.zone(),
                json);
        Rung open = Rung.of(now, moment.at());
        Optional<Plan> plan = now.plan().or(facts::plan);
        return new IsolationView(
                order,
                now,
                InWords.of(history, moment.at(), moment.who(), new Formats(day.zone())),
                steps(history, now, open, forms),
                always(now, open, forms),
                now.locks().stream()
                        .map(lock -> place(lock, now, moment, facts))
                        .toList(),
                plan.map(known -> new PlanLines(known, now).sources()).orElse(List.of()),
                plan.map(known -> new PlanLines(known, now).points()).orElse(List.of()),
                plan.map(known -> new PlanLines(known, now).checks()).orElse(List.of()),
                Papers.out(history, now, PersonInWords::name),
                sentBack.map(StepForms.SentBack::refusals).orElse(List.of()),
                done.flatMap(number -> said(history, number)));
    }

    private static List<Step> wanted(List<Step> steps, Isolation now, Rung open, String who) {
        Set<Step> shown = Set.copyOf(open.forms(now, who));
        return steps.stream()
                .filter(step -> !shown.contains(step))
                .filter(step -> step.from().contains(now.state()))
                .filter(step -> concerns(step, now, who))
                .toList();
    }

    /** Whether a step could concern this reader at all; all else is said by its rules. */
    private static boolean concerns(Step step, Isolation now, String who) {
        boolean openIsolation = now.state() != State.LIVE && now.state() != State.VOID;
        return switch (step) {
            case LOCK_ON -> !now.lockOn(who);
            case LOCK_OFF -> now.lockOn(who);
            case OPEN_SOURCE -> openIsolation && now.isolator().equals(who);
            case HAND_BACK -> openIsolation || now.live().isPresent();
            case TAKE_OVER -> !now.isolator().equals(who);
            case READ_PAPER -> now.live().isPresent();
            case REPORT_ABANDONED_LOCK ->
                now.locks().stream().anyMatch(lock -> !lock.owner().equals(who));
            case REMOVE_ABANDONED_LOCK -> !now.abandoned().isEmpty();
            case TELL_OWNER -> !now.toBeTold().isEmpty();
            case ISSUE_LIVE_PERMIT -> now.live().isEmpty();
            case DECLARE_NO_SOURCE -> now.noSource().isEmpty();
            default -> true;
        };
    }

    private List<StepForm> always(Isolation now, Rung open, StepForms forms) {
        return wanted(ANY_TIME, now, open, forms.moment().who()).stream()
                .map(forms::form)
                .toList();
    }

    private List<IsolationView.Line> steps(History history, Isolation now, Rung open, StepForms forms) {
        long from = begun(history);
        var lines = new ArrayList<IsolationView.Line>();
        boolean passed = false;
        for (Rung rung : Rung.values()) {
            String state = rung == open ? "open" : passed ? "later" : "done";
            passed |= rung == open;
            List<StepForm> shown = rung == open
                    ? rung.forms(now, forms.moment().who()).stream()
                            .filter(step -> step.from().contains(now.state()))
                            .map(forms::form)
                            .toList()
                    : List.of();
            lines.add(new IsolationView.Line(
                    lines.size() + 1, rung.title(), state, by(history, rung, from), shown, text(rung, now)));
        }
        return lines;
    }

    private static long begun(History history) {
        return history.saying(IsolationSaying.Planned.class)
                .mapToLong(Entry::number)
                .max()
                .orElse(Long.MAX_VALUE);
    }

    private String by(History history, Rung rung, long from) {
        return history.saying(IsolationSaying.class)
                .filter(entry -> entry.number() >= from)
                .filter(entry -> rung.leaves().contains(Step.of((IsolationSaying) entry.saying())))
                .reduce((former, latter) -> rung == Rung.LOCK ? former : latter)
                .map(entry -> Words.of(
                        "isolating.by",
                        PersonInWords.name(entry.moment().who()),
                        new Formats(day.zone()).clock(entry.moment().at())))
                .orElse("");
    }

    private String text(Rung rung, Isolation now) {
        var formats = new Formats(day.zone());
        return switch (rung) {
            case WAIT ->
                now.waitOverAt()
                        .map(over -> Words.of("isolating.waitUntil", formats.full(over)))
                        .orElse("");
            case POINTS, TESTER_AFTER ->
                now.provingEndsAt()
                        .map(end -> Words.of("isolating.provingUntil", formats.clock(end)))
                        .orElse("");
            default -> Words.of("isolating.about." + rung.name());
        };
    }

    private static IsolationView.LockPlace place(Lock lock, Isolation now, Moment moment, Facts facts) {
        boolean works = now.permitsWork(Condition.DEAD, lock.owner(), moment.at(), facts)
                .isEmpty();
        return new IsolationView.LockPlace(lock.number(), PersonInWords.name(lock.owner()), works);
    }

    private static Optional<String> said(History history, long number) {
        return history.entries().stream()
                .filter(entry -> entry.number() == number && entry.saying() instanceof IsolationSaying.Observed)
                .map(entry ->
                        Words.of("isolating.observed", NotCounted.inWords((IsolationSaying.Observed) entry.saying())))
                .findFirst();
    }

    private static Mentioned everybodyAndEverything() {
        return new Mentioned(
                PersonRow.everybody().stream().map(row -> row.number).collect(Collectors.toSet()),
                InstrumentRow.register().stream().map(row -> row.code).collect(Collectors.toSet()));
    }
}
