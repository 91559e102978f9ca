package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.Mentioned;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.sheet.Condition;
import wainbook.works.instruments.DoubtedSince;

/** What an isolation on paper shows, judged by the tool's own rules as things were then. */
@ApplicationScoped
public class ShownOnPaper {

    private final Ledger ledger;
    private final FactsNow factsNow;

    ShownOnPaper(Ledger ledger, FactsNow factsNow) {
        this.ledger = ledger;
        this.factsNow = factsNow;
    }

    /** The form taken through the rules step by step. */
    public Replay replay(History vehicle, IsolationForm form) {
        Isolation before = Isolation.of(vehicle.upTo(form.begunAt()));
        Mentioned all = mentioned(form);
        return Replay.of(
                before,
                form,
                taken -> factsNow.then(
                        vehicle,
                        Moment.of(taken.who(), taken.at()),
                        all.and(taken.wanted().mentions())));
    }

    /** Why the form does not show that the vehicle was dead; empty when nothing speaks against it. */
    public List<Reason> notShown(History vehicle, IsolationForm form) {
        Stream<Reason> refused = replay(vehicle, form).notTaken().stream().flatMap(step -> step.reasons().stream());
        Stream<Reason> doubted = form.provings().stream()
                .flatMap(proved -> Stream.of(proved.tester(), proved.source())
                        .filter(code -> code.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}"))
                        .flatMap(code ->
                                DoubtedSince.against(ledger.history(Subject.instrument(code)), proved.at()).stream()));
        return Stream.concat(refused, doubted).distinct().toList();
    }

    /**
     * What stands in the way of somebody's work on the dead system by the isolations on paper; empty where none of them was
     * under way at the time.
     *
     * @param landing sources that the work brings aboard: they were opened first
     */
    public Optional<List<Reason>> against(History vehicle, Moment done, List<String> landing) {
        var all = new ArrayList<List<Reason>>();
        PaperIsolations.of(vehicle).written().stream()
                .filter(paper -> underWay(paper.written(), done))
                .forEach(paper -> all.add(against(vehicle, paper, done, landing)));
        return all.stream()
                .filter(List::isEmpty)
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    private static boolean underWay(IsolationForm form, Moment done) {
        return !done.at().isBefore(form.begunAt())
                && form.restored().filter(last -> done.at().isAfter(last.at())).isEmpty();
    }

    private List<Reason> against(History vehicle, OnPaper paper, Moment done, List<String> landing) {
        if (!paper.notShown().isEmpty()) {
            return List.of(Reason.of("isolating.paperNotShown", Reason.WORKS_RULE, paper.form()));
        }
        Isolation then = replay(vehicle, paper.written()).at(done.at());
        Facts facts = Replay.byTheMinute(factsNow.then(vehicle, done, mentioned(paper.written())));
        Stream<Reason> closed = landing.stream()
                .filter(source -> !then.isOpen(source))
                .map(source -> Reason.of("isolating.sourceClosedOnPaper", Reason.PRACTICE, source));
        return Stream.concat(then.permitsWork(Condition.DEAD, done.who(), done.at(), facts).stream(), closed)
                .toList();
    }

    private static Mentioned mentioned(IsolationForm form) {
        String[] instruments = form.provings().stream()
                .flatMap(proved -> Stream.of(proved.tester(), proved.source()))
                .distinct()
                .toArray(String[]::new);
        return Mentioned.people(form.people().toArray(String[]::new)).and(Mentioned.instruments(instruments));
    }
}
