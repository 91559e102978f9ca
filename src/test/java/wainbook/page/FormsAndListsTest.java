package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class FormsAndListsTest {

    @Test
    void what_was_typed_stays_beside_what_is_wrong_with_it() {
        Form form = Form.EMPTY.with("torqueNm", "27,4.1").wrong("torqueNm", "looks.torqueFault", "27,4.1");
        assertThat(form.right()).isFalse();
        assertThat(form.value("torqueNm")).isEqualTo("27,4.1");
        assertThat(form.fault("torqueNm"))
                .hasValueSatisfying(text -> assertThat(text).contains("“27,4.1”"));
        assertThat(form.fault("serial")).isEmpty();
    }

    @Test
    void a_list_leads_to_its_neighbouring_pages_and_keeps_its_filter() {
        Leaf leaf = new Leaf(2, 25, 60, "/matters?open=yes");
        assertThat(leaf.from()).isEqualTo(26);
        assertThat(leaf.to()).isEqualTo(50);
        assertThat(leaf.previous()).contains("/matters?open=yes&page=1");
        assertThat(leaf.following()).contains("/matters?open=yes&page=3");
        assertThat(new Leaf(3, 25, 60, "/matters").following()).isEmpty();
        assertThat(new Leaf(1, 25, 0, "/matters").from()).isZero();
    }

    @Test
    void times_are_local_and_the_full_instant_stands_behind() {
        Formats formats = new Formats(ZoneId.of("Europe/London"));
        Instant summer = Instant.parse("2026-07-01T08:14:27Z");
        assertThat(formats.clock(summer)).isEqualTo("09:14");
        assertThat(formats.full(summer)).isEqualTo("Wednesday 1 July 2026 09:14:27 Europe/London (UTC+01:00)");
        assertThat(formats.moment(Instant.parse("2026-11-24T09:14:00Z"))).isEqualTo("24 Nov 2026 09:14");
    }

    @Test
    void the_hour_that_comes_twice_is_told_apart_by_its_offset() {
        Formats formats = new Formats(ZoneId.of("Europe/London"));
        assertThat(formats.full(Instant.parse("2026-10-25T00:30:00Z"))).endsWith("(UTC+01:00)");
        assertThat(formats.full(Instant.parse("2026-10-25T01:30:00Z"))).endsWith("(UTC)");
    }

    @Test
    void durations_are_in_hours_and_minutes() {
        assertThat(Formats.duration(Duration.ofMinutes(72))).isEqualTo("1 h 12 min");
        assertThat(Formats.duration(Duration.ofSeconds(59))).isEqualTo("0 min");
    }
}
