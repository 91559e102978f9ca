package wainbook.line.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpCalled;

/** Whoever stands five metres away reads where each vehicle is, and in a few words why it does not go on. */
@QuarkusTest
class WallPageTest {

    private OnRecord ahead;
    private OnRecord behind;

    @BeforeEach
    void two_buses_stand_one_behind_the_other() {
        Cast.assemble();
        ahead = OnRecord.accepted().at("strip", "ST-1").at("fitting", "ST-2");
        behind = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_stations_are_free_again() {
        ahead.out();
        behind.out();
    }

    private static String wall() {
        return Browsing.as(Cast.TECHNICIAN).page("/wall");
    }

    private static String rowOf(OnRecord vehicle, String wall) {
        String from = wall.substring(wall.lastIndexOf("<tr>", wall.indexOf(vehicle.number())));
        return from.substring(0, from.indexOf("</tr>"));
    }

    @Test
    void a_vehicle_that_is_blocked_waits_for_a_station_and_one_in_work_has_open_items() {
        behind.signed();
        assertThat(rowOf(behind, wall())).contains("blocked", "waits for ST-2");
        assertThat(rowOf(ahead, wall())).contains("working", "item").doesNotContain("waits for");
    }

    @Test
    void a_station_without_a_vehicle_says_whom_it_waits_for() {
        ahead.out();
        behind.signed();
        assertThat(wall()).contains("waits for ST-1");
        assertThat(rowOf(behind, wall())).contains("blocked", "can move on");
    }

    @Test
    void a_call_for_help_stands_above_the_rows_and_nothing_can_be_touched() {
        assertThat(wall()).doesNotContain("for help");
        ahead.say(new HelpCalled(
                1, Help.MAINTENANCE, Optional.of("fitting"), Optional.of("ST-2"), Optional.empty(), false));
        String wall = wall();
        assertThat(wall).contains("1 call for help");
        assertThat(wall.substring(wall.indexOf("id=\"wall\""), wall.indexOf("</main>")))
                .doesNotContain("<a ", "<button", "<form");
    }
}
