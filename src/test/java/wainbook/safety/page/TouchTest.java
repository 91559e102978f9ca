package wainbook.safety.page;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.ws.rs.core.MultivaluedHashMap;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;

/** What is kept of a touch, and that nothing in it can be wrong. */
class TouchTest {

    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
    private static final Actor PERSON = new Actor("7001", Optional.of(NOW), Optional.of("ST-7"), CLOCK);

    @Test
    void nothing_at_all_is_a_touch_too() {
        Touch touch = Touch.sent(null, new MultivaluedHashMap<>());
        assertThat(touch.id()).isNotNull();
        assertThat(touch.report().order()).isEmpty();
        assertThat(touch.by(PERSON)).isEqualTo(PERSON);
    }

    @Test
    void what_is_no_vehicle_or_station_is_left_out() {
        Touch touch = touch("not an id", "../../etc", "<b>");
        assertThat(touch.order()).isEmpty();
        assertThat(touch.station()).isEmpty();
    }

    @Test
    void with_a_name_everything_of_the_page_is_kept() {
        UUID id = UUID.randomUUID();
        Touch touch = touch(id.toString(), "WB-1", "ST-7");
        assertThat(touch.report().id()).isEqualTo(id);
        assertThat(touch.report().order()).contains("WB-1");
        assertThat(touch.report().station()).contains("ST-7");
        assertThat(touch.stop().station()).contains("ST-7");
    }

    @Test
    void without_a_name_neither_person_nor_device_nor_unless_ticked_the_place_is_kept() {
        Touch bare = touch("", "WB-1", "ST-7", "nameless");
        assertThat(bare.by(PERSON)).isEqualTo(Actor.of("nameless", CLOCK));
        assertThat(bare.report().order()).isEmpty();
        assertThat(bare.report().station()).isEmpty();
        Touch placed = touch("", "WB-1", "ST-7", "nameless", "place");
        assertThat(placed.by(PERSON)).isEqualTo(Actor.of("nameless", CLOCK));
        assertThat(placed.report().order()).contains("WB-1");
        assertThat(placed.report().station()).contains("ST-7");
    }

    @Test
    void a_stop_keeps_what_it_stops_and_no_more() {
        assertThat(touch("", "WB-1", "ST-7", "nameless").stop().order()).contains("WB-1");
        assertThat(touch("", "WB-1", "ST-7", "nameless").stop().station()).isEmpty();
        assertThat(touch("", "", "ST-7", "nameless").stop().station()).contains("ST-7");
    }

    @Test
    void words_are_kept_without_blanks_around_them_and_a_code_of_forty_characters_is_one() {
        var form = new MultivaluedHashMap<String, String>();
        form.putSingle("words", "  the hook slipped ");
        form.putSingle("atStation", "x".repeat(40));
        form.putSingle("atOrder", "x".repeat(41));
        Touch touch = Touch.sent("", form);
        assertThat(touch.words()).contains("the hook slipped");
        assertThat(touch.report().words()).contains("the hook slipped");
        assertThat(touch.stop().words()).contains("the hook slipped");
        assertThat(touch.station()).isPresent();
        assertThat(touch.order()).isEmpty();
        assertThat(touch.stop().id()).isEqualTo(touch.id());
        assertThat(Touch.text("  ")).isEmpty();
    }

    private static Touch touch(String id, String order, String station, String... ticks) {
        var form = new MultivaluedHashMap<String, String>();
        form.putSingle("atOrder", order);
        form.putSingle("atStation", station);
        for (String tick : ticks) {
            form.putSingle(tick, "yes");
        }
        return Touch.sent(id, form);
    }
}
