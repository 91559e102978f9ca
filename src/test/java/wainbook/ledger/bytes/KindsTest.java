package wainbook.ledger.bytes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.Kind;
import wainbook.ledger.Kinds;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.Superseded;

class KindsTest {

    sealed interface Weighing extends Saying {}

    @Kind("scales.weighed/1")
    record WeighedInTonnes(BigDecimal tonnes) implements Weighing, Superseded {
        @Override
        public Saying newer() {
            return new Weighed(tonnes.movePointRight(3));
        }
    }

    @Kind("scales.weighed/2")
    record Weighed(BigDecimal massKg) implements Weighing {}

    sealed interface WithDouble extends Saying {}

    @Kind("scales.double/1")
    record HasDouble(double massKg) implements WithDouble {}

    sealed interface WithMap extends Saying {}

    @Kind("scales.map/1")
    record HasMap(Map<String, String> free) implements WithMap {}

    sealed interface Nameless extends Saying {}

    record HasNoKind(String text) implements Nameless {}

    sealed interface Twice extends Saying {}

    @Kind("scales.weighed/2")
    record WeighedAgain(BigDecimal massKg) implements Twice {}

    @Test
    void reads_an_old_version_as_the_newest() {
        var kinds = Kinds.of(List.of(Weighing.class));
        var subject = Subject.workOrder("WB-1");
        var said = Said.of(
                new UUID(0, 1),
                subject,
                1,
                Said.NOTHING,
                Moment.of("1", Instant.EPOCH),
                new WeighedInTonnes(new BigDecimal("12.5")));
        Entry read = Said.parse(said.text()).entry("", kinds);
        assertThat(read.saying()).isEqualTo(new Weighed(new BigDecimal("12500")));
    }

    @Test
    void refuses_types_that_have_more_than_one_form_in_bytes() {
        assertThatThrownBy(() -> Kinds.of(List.of(WithDouble.class))).hasMessageContaining("HasDouble.massKg");
        assertThatThrownBy(() -> Kinds.of(List.of(WithMap.class))).hasMessageContaining("HasMap.free");
    }

    @Test
    void refuses_a_saying_without_a_kind_and_a_kind_that_stands_twice() {
        assertThatThrownBy(() -> Kinds.of(List.of(Nameless.class))).hasMessageContaining("needs @Kind");
        assertThatThrownBy(() -> Kinds.of(List.of(Weighing.class, Twice.class)))
                .hasMessageContaining("scales.weighed/2 stands for both");
    }
}
