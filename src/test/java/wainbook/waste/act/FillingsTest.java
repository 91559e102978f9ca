package wainbook.waste.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.ledger.Subject;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.Said;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.ContainerSealed;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.PlacingVoided;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.PutInVoided;
import wainbook.waste.WasteSaying.Share;

/** Whatever people do with containers: what lies in them is what left the vehicles, no more and no less. */
class FillingsTest {

    private static final List<String> CODES = List.of("13 02 05*", "16 01 14*", "16 01 07*", "16 01 17", "16 01 22");
    private static final int CONTAINERS = 8;
    private static final int VEHICLES = 6;
    private static final int ACTS = 300;

    private final Filling works = new Filling();
    private int put;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
    void container_masses_add_up_to_what_left_the_vehicles_and_shares_to_the_note(long seed) {
        var random = new SplittableRandom(seed);
        IntStream.range(0, CONTAINERS)
                .forEach(i -> works.open(
                        "C" + i,
                        CODES.get(i % CODES.size()),
                        String.valueOf(random.nextInt(20, 400)),
                        i % 3 == 0 ? Measure.L : Measure.KG));
        for (int act = 0; act < ACTS; act++) {
            act(random);
            assertThat(inContainers()).as("after act %s", act).isEqualByComparingTo(ofVehicles());
        }
        for (Container container : containers()) {
            assertThat(container.filled())
                    .isLessThanOrEqualTo(container.opened().capacity());
            assertThat(container.inside())
                    .allMatch(put -> put.what().endsWith(container.row().code()));
            if (container.massKg().signum() > 0) {
                BigDecimal note = container.massKg().multiply(BigDecimal.valueOf(random.nextInt(900, 1100), 3));
                List<Share> shares = Collecting.shares(container.inside(), note.setScale(1, java.math.RoundingMode.UP));
                assertThat(shares.stream().map(Share::shareKg).reduce(BigDecimal.ZERO, BigDecimal::add))
                        .isEqualByComparingTo(note.setScale(1, java.math.RoundingMode.UP));
            }
        }
        assertThat(put).as("how often something was put in").isGreaterThan(10);
    }

    private void act(SplittableRandom random) {
        String label = "C" + random.nextInt(CONTAINERS);
        String order = "V" + random.nextInt(VEHICLES);
        int kind = random.nextInt(20);
        if (kind == 0 && random.nextInt(4) == 0) {
            works.say(
                    Labels.subject(label),
                    new ContainerSealed(works.container(label).massKg()));
        } else if (kind < 4) {
            works.container(label).inside().stream().findAny().ifPresent(put -> undo(label, put));
        } else {
            int key = random.nextInt(12);
            BigDecimal litres = BigDecimal.valueOf(random.nextInt(1, 600), 1);
            String code = CODES.get(key % CODES.size());
            boolean dipped = random.nextInt(2) == 0;
            Thing thing = works.thing(
                    order,
                    "n" + key,
                    code,
                    litres.toPlainString(),
                    Optional.of(litres).filter(some -> dipped));
            put += works.put(label, order, thing).isEmpty() ? 1 : 0;
        }
    }

    private void undo(String label, PutIn put) {
        works.say(Labels.subject(label), new PutInVoided(put.order(), put.thing(), "slip"));
        works.say(Subject.workOrder(put.order()), new PlacingVoided(put.thing(), label, "slip"));
    }

    private List<Container> containers() {
        return IntStream.range(0, CONTAINERS)
                .mapToObj(i -> works.container("C" + i))
                .toList();
    }

    private BigDecimal inContainers() {
        return containers().stream().map(Container::massKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private BigDecimal ofVehicles() {
        return IntStream.range(0, VEHICLES)
                .mapToObj(i -> Said.of(works.stream(Subject.workOrder("V" + i))))
                .flatMap(said -> said.byThing().values().stream())
                .flatMap(of -> of.placed().stream())
                .map(Placed::massKg)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
