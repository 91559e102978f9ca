package wainbook.isolation;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import org.junit.jupiter.api.Test;
import wainbook.process.plan.ElectricalCondition;

class ExhaustiveWalkTest {
    @Test
    void no_order_of_steps_lets_anybody_work_dead_without_cause() {
        long begin = System.nanoTime();
        int[] allowed = {0};
        var walk = new Walk(PLAN, PEOPLE, false, here -> {
            if (here.states() > 3_000_000) throw new AssertionError("too many");
            if (here.states() % 100000 == 0)
                System.out.println(
                        "walk " + here.states() + " " + here.here().isolation().state());
            for (String who : here.people()) {
                var place = here.here();
                if (place.isolation()
                        .permitsWork(ElectricalCondition.DEAD, who, place.now(), here.factsHere())
                        .isEmpty()) {
                    allowed[0]++;
                    assertThat(new RawEntries(here.history()).missingForDeadWork(who, place.now(), here.factsHere()))
                            .as(() -> who + here.history())
                            .isEmpty();
                }
            }
        });
        try {
            walk.run();
        } finally {
            System.out.println("walk: " + walk.states() + " states, " + walk.edges() + " edges, allowed " + allowed[0]
                    + " time " + (System.nanoTime() - begin) / 1000000);
        }
    }
}
