package wainbook.page.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PartTest {

    private static final Instant MINUTE = Instant.parse("2026-11-25T09:41:00Z");

    private final AtomicInteger drawings = new AtomicInteger();
    private final Part part = new Part(() -> "drawing " + drawings.incrementAndGet());

    @Test
    void fifty_screens_cost_one_drawing() {
        for (int screen = 0; screen < 50; screen++) {
            assertThat(part.drawn(new Seen(7, MINUTE, 0))).isEqualTo("drawing 1");
        }
    }

    @Test
    void an_entry_a_minute_or_something_worked_out_costs_one_more() {
        part.drawn(new Seen(7, MINUTE, 0));
        assertThat(part.drawn(new Seen(8, MINUTE, 0))).isEqualTo("drawing 2");
        assertThat(part.drawn(new Seen(8, MINUTE.plusSeconds(60), 0))).isEqualTo("drawing 3");
        assertThat(part.drawn(new Seen(8, MINUTE.plusSeconds(60), 1))).isEqualTo("drawing 4");
    }

    @Test
    void nothing_is_drawn_while_nobody_looks() {
        part.tell(new Seen(7, MINUTE, 0), true);
        assertThat(drawings).hasValue(0);
    }

    @Test
    void a_drawing_that_failed_is_tried_again() {
        var broken = new Part(() -> {
            if (drawings.incrementAndGet() == 1) {
                throw new IllegalStateException("the database is away");
            }
            return "drawn";
        });
        try {
            broken.drawn(new Seen(7, MINUTE, 0));
        } catch (IllegalStateException away) {
            assertThat(away).hasMessageContaining("away");
        }
        assertThat(broken.drawn(new Seen(7, MINUTE, 0))).isEqualTo("drawn");
    }
}
