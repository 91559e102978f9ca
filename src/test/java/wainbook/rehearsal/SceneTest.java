package wainbook.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.rehearsal.scenario.Scene;
import wainbook.rehearsal.scenario.Scene.Found;
import wainbook.rehearsal.scenario.Scene.Member;

class SceneTest {

    @Test
    void one_vehicle_keeps_the_others_waiting_and_the_station_before_it_empty() {
        Scene scene = Scene.of(10);
        assertThat(scene.members()).extracting(Member::step).containsExactly(9, 7, 6, 5, 4, 3, 2, 1, 0);
        assertThat(scene.members()).extracting(Member::found).containsOnlyOnce(Found.STUCK, Found.HELD);
    }

    @Test
    void every_vehicle_came_where_it_stands_in_the_slot_that_its_entry_makes() {
        for (Member member : Scene.of(10).members()) {
            assertThat(member.entry() + member.step()).as(member.toString()).isEqualTo(member.since());
        }
    }

    @Test
    void no_two_vehicles_stand_on_one_step_however_long_the_line() {
        IntStream.rangeClosed(2, 15)
                .forEach(steps -> assertThat(Scene.of(steps).members())
                        .extracting(Member::step)
                        .doesNotHaveDuplicates()
                        .allMatch(step -> step >= 0 && step < steps));
    }

    @Test
    void the_papers_of_whatever_has_left_the_line_are_not_noted_in_the_time_to_come() {
        int steps = 10;
        assertThat(Playing.papersSlot(-steps, steps)).isLessThanOrEqualTo(0);
    }
}
