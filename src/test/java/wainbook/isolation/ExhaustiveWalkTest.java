package wainbook.isolation;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import wainbook.process.plan.ElectricalCondition;

class ExhaustiveWalkTest {
    @Test
    void free() { go(List.of(AUTHORISED, SECOND_AUTHORISED, OUTSIDER), t -> true); }

    @Test
    void roster() { go(PEOPLE, t -> true); }
 void x() { go(PEOPLE, ExhaustiveWalkTest::rostered); }

    private static final Set<Step> PAPERS = Set.of(Step.ISSUE_SANCTION, Step.ISSUE_LIVE_PERMIT, Step.REPORT_ABANDONED_LOCK, Step.TAKE_OVER);

    private static boolean rostered(Walk.Try t) {
        var step = Step.of(t.said());
        if (PAPERS.contains(step)) return false;
        if (t.said() instanceof IsolationSaying.PermitIssued p && !p.receiver().equals(TECHNICIAN)) return false;
        return switch (t.who()) {
            case AUTHORISED -> !Set.of(Step.CHECK_RESTORATION, Step.READ_PAPER).contains(step);
            case SECOND_AUTHORISED -> !Set.of(Step.PLAN, Step.LOCK_ON, Step.PROVE_TESTER_BEFORE).contains(step);
            case TECHNICIAN, LEARNER -> Set.of(Step.LOCK_ON, Step.LOCK_OFF, Step.READ_PAPER, Step.HAND_BACK).contains(step);
            default -> true;
        };
    }

    void go(List<String> people, Predicate<Walk.Try> roster) {
        long begin = System.nanoTime();
        int[] allowed = {0};
        int[] at = {0};
        var walk = new Walk(PLAN, people, roster, here -> {
            if (here.states() > 600_000) throw new AssertionError("too many");
            if (here.states() / 50000 > at[0]) { at[0]++; System.out.println("walk " + here.states() + " " + (System.nanoTime() - begin) / 1000000 + " " + here.edges()+ " " + allowed[0]); }
            for (String who : here.people()) {
                var place = here.here();
                if (Permission.allow(new Permission.Wish(ElectricalCondition.DEAD, who, place.now(), here.factsHere(), place.isolation().at(place.now())))) {
                    allowed[0]++;
                    var missing = new RawEntries(here.history()).missingForDeadWork(who, place.now(), here.factsHere());
                    if (!missing.isEmpty()) throw new AssertionError(missing + who + here.history());
                }
            }
        });
        try { walk.run(); } finally {
        System.out.println("walk: " + walk.states() + " states, " + walk.edges() + " edges, allowed " + allowed[0] + " time " + (System.nanoTime() - begin) / 1000000); }
    }
}
