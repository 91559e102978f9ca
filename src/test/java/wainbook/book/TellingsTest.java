package wainbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.gate.GateSaying;
import wainbook.handover.HandoverSaying;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.matter.MatterSaying;
import wainbook.order.OrderSaying;
import wainbook.station.StationSaying;

class TellingsTest {

    @Kind("future.somethingNewDone/1")
    record SomethingNewDone() implements Saying {}

    @Test
    void every_kind_of_the_rooms_of_a_vehicle_is_told() {
        var untold = new ArrayList<Class<?>>();
        for (Class<?> family : List.of(
                OrderSaying.class, MatterSaying.class, StationSaying.class, GateSaying.class, HandoverSaying.class)) {
            kinds(family).stream().filter(kind -> !Tellings.all().know(kind)).forEach(untold::add);
        }
        assertThat(untold).isEmpty();
    }

    @Test
    void a_kind_that_nobody_tells_yet_is_told_by_its_name() {
        Told told = new Tellings().tell(new SomethingNewDone(), null);
        assertThat(told.what()).isEqualTo("future: something new done");
    }

    private static List<Class<?>> kinds(Class<?> family) {
        var kinds = new ArrayList<Class<?>>();
        for (Class<?> member : family.getPermittedSubclasses()) {
            if (member.isInterface()) {
                kinds.addAll(kinds(member));
            } else {
                kinds.add(member);
            }
        }
        return kinds;
    }
}
