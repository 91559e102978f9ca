package wainbook.station.work;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.Mentioned;
import wainbook.isolation.step.FactsNow;
import wainbook.isolation.step.ShownOnPaper;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.permit.Permits;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;

/** What a vehicle's electrical state says to work on an item, and which source the work brings aboard. */
@ApplicationScoped
class Electrical {

    private final FactsNow factsNow;
    private final ShownOnPaper onPaper;
    private final Releases releases;

    Electrical(FactsNow factsNow, ShownOnPaper onPaper, Releases releases) {
        this.factsNow = factsNow;
        this.onPaper = onPaper;
        this.releases = releases;
    }

    List<Reason> against(CheckItem item, History history, Moment moment) {
        List<String> landing = landing(item, history);
        List<Reason> fitting = fitting(landing, history);
        return item.condition() == Condition.NONE
                ? fitting
                : Stream.concat(power(item, history, moment, landing), fitting.stream())
                        .toList();
    }

    /** No pack comes aboard beside open hot work. */
    private static List<Reason> fitting(List<String> landing, History history) {
        return landing.isEmpty() ? List.of() : Permits.of(history).againstFittingPacks();
    }

    private Stream<Reason> power(CheckItem item, History history, Moment moment, List<String> landing) {
        Isolation now = Isolation.of(history);
        var facts = factsNow.of(history, moment, Mentioned.people(moment.who()));
        Stream<Reason> closed = landing.stream()
                .filter(source -> item.condition() == Condition.DEAD && !now.isOpen(source))
                .map(source -> Reason.of("station.sourceStillClosed", Reason.PRACTICE, source));
        String desk = "/isolation/" + history.subject().code();
        return Stream.concat(now.permitsWork(item.condition(), moment.who(), moment.at(), facts).stream(), closed)
                .map(reason -> reason.liftedAt(desk));
    }

    /**
     * The same for work that was written on paper: as the tool knew the vehicle at the time, or as an isolation on paper shows
     * it. Live work and work under a sanction for test are not taken from paper at all.
     *
     * @param done who worked, and when
     */
    List<Reason> onPaper(CheckItem item, History history, Moment done) {
        return Stream.concat(
                        powerOnPaper(item, history, done).stream(),
                        fitting(landing(item, history), history.upTo(done.at())).stream())
                .toList();
    }

    private List<Reason> powerOnPaper(CheckItem item, History history, Moment done) {
        return switch (item.condition()) {
            case NONE -> List.of();
            case TEST_UNDER_ISOLATION, LIVE ->
                List.of(Reason.of("station.notFromPaper", Reason.WORKS_RULE, item.key()));
            case NO_SOURCE_ABOARD -> then(item, history, done);
            case DEAD -> {
                List<Reason> byTool = then(item, history, done);
                yield byTool.isEmpty()
                        ? byTool
                        : onPaper.against(history, done, landing(item, history)).orElse(byTool);
            }
        };
    }

    private List<Reason> then(CheckItem item, History history, Moment done) {
        History then = history.upTo(done.at());
        Isolation isolation = Isolation.of(then);
        var facts = factsNow.then(history, done, Mentioned.people(done.who()));
        Stream<Reason> closed = landing(item, history).stream()
                .filter(source -> item.condition() == Condition.DEAD && !isolation.isOpen(source))
                .map(source -> Reason.of("station.sourceStillClosed", Reason.PRACTICE, source));
        return Stream.concat(isolation.permitsWork(item.condition(), done.who(), done.at(), facts).stream(), closed)
                .toList();
    }

    /** Sources of the vehicle's plan that fitting this item's parts brings aboard for the first time. */
    List<String> landing(CheckItem item, History history) {
        if (item.parts().isEmpty()) {
            return List.of();
        }
        List<String> aboard = Isolation.of(history).aboard();
        return WorkOrder.of(history)
                .flatMap(order -> releases.plan(order.ordered().variant()))
                .stream()
                .flatMap(plan -> landing(item, plan))
                .filter(source -> !aboard.contains(source))
                .toList();
    }

    private static Stream<String> landing(CheckItem item, Plan plan) {
        return item.parts().stream().map(CheckItem.PartUse::part).filter(plan::foresees);
    }
}
