package wainbook.quality.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import wainbook.quality.reading.Reading;
import wainbook.rehearsal.CleanVehicles;

/**
 * How many planted patterns are found. In a record of 300 vehicles each tenth vehicle from the hundredth on has one entry made
 * by the pattern; patterns of a month are planted in all that one person does from the hundredth vehicle on.
 */
class DetectionTest {

    private static final int VEHICLES = 300;
    private static final int FROM = 100;
    private static final String PERSON = "W-3";
    private static final Instant LATER = Instant.parse("2099-01-01T00:00:00Z");

    @TestFactory
    List<DynamicTest> each_planted_pattern_is_found_often_enough() {
        return List.of(
                each("same five values in a row", Rule.SAME_VALUE, 0.9, readings -> sameFive(readings)),
                each("the target in every other reading", Rule.TARGET_TYPED, 0.9, readings -> targets(readings)),
                each("the point one place on", Rule.SLIP, 0.9, readings -> pointMoved(readings)),
                each("copied from the vehicle before", Rule.COPIED, 0.9, null),
                each("all bolts within 20 s", Rule.TOO_FAST, 0.9, null),
                each("five entries within 20 s after an hour", Rule.BATCH, 0.9, null),
                each("device 20 min behind", Rule.BACK_DATED, 0.9, readings -> backDated(readings)),
                each("at two stations within 10 s", Rule.TWO_PLACES, 0.9, null),
                month("every second last digit 0 or 5", Rule.DIGITS, readings -> rounded(readings)),
                month("half the usual scatter", Rule.LITTLE_SCATTER, readings -> narrowed(readings)),
                month("one reading in ten just inside", Rule.JUST_INSIDE, readings -> justInside(readings)));
    }

    private DynamicTest each(String pattern, Rule rule, double least, UnaryOperator<List<Reading>> plant) {
        return DynamicTest.dynamicTest(pattern, () -> {
            var hand = new Planting(rule, plant);
            List<Reading> readings = new CleanVehicles(11).all(VEHICLES, hand);
            Set<UUID> found = new HashSet<>();
            Unlikely.over(readings, FalseAlarmsTest.ZONE, true, LATER).stream()
                    .filter(question -> question.rule() == rule)
                    .forEach(question -> question.entries().forEach(reading -> found.add(reading.entry())));
            long seen = hand.planted.stream().filter(found::contains).count();
            System.out.printf("%-40s %-15s %d of %d found%n", pattern, rule, seen, hand.planted.size());
            assertThat(hand.planted).hasSizeGreaterThanOrEqualTo(15);
            assertThat(seen / (double) hand.planted.size()).isGreaterThanOrEqualTo(least);
        });
    }

    private DynamicTest month(String pattern, Rule rule, UnaryOperator<List<Reading>> plant) {
        return DynamicTest.dynamicTest(pattern, () -> {
            List<Reading> readings = new CleanVehicles(11)
                    .all(
                            VEHICLES,
                            (vehicle, entry) -> vehicle >= FROM
                                            && !entry.isEmpty()
                                            && entry.get(0).person().equals(PERSON)
                                    ? plant.apply(entry)
                                    : entry);
            List<Question> found = Unlikely.over(readings, FalseAlarmsTest.ZONE, true, LATER).stream()
                    .filter(question -> question.rule() == rule)
                    .toList();
            long own = found.stream()
                    .filter(question -> question.person().equals(PERSON))
                    .count();
            System.out.printf("%-40s %-15s %d questions, %d to others%n", pattern, rule, own, found.size() - own);
            assertThat(own).isPositive();
            assertThat(found.size() - own).isZero();
        });
    }

    /** Plants at one entry of four fasteners or more with wide scatter, on each tenth vehicle. */
    private static final class Planting implements CleanVehicles.Hand {
        private final Rule rule;
        private final UnaryOperator<List<Reading>> plant;
        private final List<UUID> planted = new ArrayList<>();
        private final Map<String, List<Reading>> before = new HashMap<>();
        private final Map<String, Instant> last = new HashMap<>();
        private int vehicle = -1;
        private boolean done;
        private int batch;
        private Instant batchAt = Instant.EPOCH;

        Planting(Rule rule, UnaryOperator<List<Reading>> plant) {
            this.rule = rule;
            this.plant = plant;
        }

        @Override
        public List<Reading> write(int now, List<Reading> entry) {
            if (now != vehicle) {
                vehicle = now;
                done = false;
                batch = 0;
            }
            if (entry.isEmpty()) {
                return entry;
            }
            List<Reading> made = entry;
            boolean due = now >= FROM && now % 10 == 0;
            if (due && rule == Rule.BATCH) {
                made = batched(entry);
            } else if (due && !done && fits(entry)) {
                List<Reading> changed = changed(entry);
                if (!changed.equals(entry)) {
                    done = true;
                    planted.add(entry.get(0).entry());
                    made = changed;
                }
            }
            entry.get(0).joint().ifPresent(joint -> before.put(joint, entry));
            last.put(made.get(0).person(), made.get(0).at());
            return made;
        }

        private static boolean fits(List<Reading> entry) {
            return entry.size() >= 6
                    && entry.get(0).joint().isPresent()
                    && entry.get(0).target().orElseThrow().doubleValue() >= 60;
        }

        private List<Reading> batched(List<Reading> entry) {
            if (batch == 5) {
                return entry;
            }
            Instant own = last.getOrDefault(entry.get(0).person(), entry.get(0).at());
            if (batch == 0) {
                batchAt = own.plus(Duration.ofMinutes(61));
                if (batchAt.isBefore(entry.get(0).at())) {
                    batchAt = entry.get(0).at();
                }
            }
            batch++;
            if (batch == 5) {
                planted.add(entry.get(0).entry());
            }
            Instant at = batchAt.plusSeconds(4L * batch);
            return with(entry, reading -> at(reading, at, PERSON + vehicle, reading.station()));
        }

        private List<Reading> changed(List<Reading> entry) {
            Reading first = entry.get(0);
            if (rule == Rule.COPIED) {
                List<Reading> former = before.getOrDefault(first.joint().orElseThrow(), List.of());
                return former.size() != entry.size()
                        ? entry
                        : indexed(entry, i -> former.get(i).value());
            }
            Optional<Instant> own = Optional.ofNullable(last.get(first.person()));
            if (rule == Rule.TOO_FAST) {
                return own.filter(at -> !at.isAfter(first.at()))
                        .map(at -> with(entry, one -> at(one, at.plusSeconds(20), one.person(), one.station())))
                        .orElse(entry);
            }
            if (rule == Rule.TWO_PLACES) {
                return own.map(at -> with(
                                entry, one -> at(one, at.plusSeconds(10), one.person(), Optional.of("S-elsewhere"))))
                        .orElse(entry);
            }
            return plant.apply(entry);
        }
    }

    private static List<Reading> sameFive(List<Reading> entry) {
        return indexed(entry, i -> entry.get(i < 5 ? 0 : i).value());
    }

    private static List<Reading> targets(List<Reading> entry) {
        return indexed(
                entry,
                i -> i % 2 == 0
                        ? entry.get(i).target().orElseThrow().setScale(1, RoundingMode.UNNECESSARY)
                        : entry.get(i).value());
    }

    private static List<Reading> pointMoved(List<Reading> entry) {
        return indexed(
                entry,
                i -> i == 0
                        ? entry.get(0).value().movePointRight(1)
                        : entry.get(i).value());
    }

    private static List<Reading> backDated(List<Reading> entry) {
        return with(
                entry,
                one -> copy(
                        one,
                        one.value(),
                        one.at(),
                        Optional.of(one.at().minusSeconds(1200)),
                        one.person(),
                        one.station()));
    }

    private static List<Reading> rounded(List<Reading> entry) {
        return indexed(entry, i -> {
            BigDecimal value = entry.get(i).value();
            BigDecimal half = BigDecimal.valueOf(5).scaleByPowerOfTen(-value.scale());
            return i % 2 == 0
                    ? value.divide(half, 0, RoundingMode.HALF_UP)
                            .multiply(half)
                            .setScale(value.scale(), RoundingMode.HALF_UP)
                    : value;
        });
    }

    private static List<Reading> narrowed(List<Reading> entry) {
        return indexed(entry, i -> {
            Reading one = entry.get(i);
            if (one.target().isEmpty()) {
                return one.value();
            }
            BigDecimal target = one.target().get();
            return target.add(one.value().subtract(target).multiply(new BigDecimal("0.5")))
                    .setScale(one.value().scale(), RoundingMode.HALF_EVEN);
        });
    }

    private static List<Reading> justInside(List<Reading> entry) {
        return indexed(entry, i -> {
            Reading one = entry.get(i);
            return i % 10 == 3 && one.bothLimits()
                    ? one.upper()
                            .orElseThrow()
                            .subtract(one.upper()
                                    .get()
                                    .subtract(one.lower().orElseThrow())
                                    .multiply(new BigDecimal("0.01")))
                    : one.value();
        });
    }

    private interface At {
        BigDecimal value(int index);
    }

    private static List<Reading> indexed(List<Reading> entry, At at) {
        var changed = new ArrayList<Reading>();
        for (int i = 0; i < entry.size(); i++) {
            Reading one = entry.get(i);
            changed.add(copy(one, at.value(i), one.at(), one.deviceAt(), one.person(), one.station()));
        }
        return changed;
    }

    private static List<Reading> with(List<Reading> entry, UnaryOperator<Reading> change) {
        return entry.stream().map(change).toList();
    }

    private static Reading at(Reading one, Instant at, String person, Optional<String> station) {
        return copy(one, one.value(), at, Optional.of(at), person, station);
    }

    private static Reading copy(
            Reading one,
            BigDecimal value,
            Instant at,
            Optional<Instant> deviceAt,
            String person,
            Optional<String> station) {
        boolean failed = one.lower().map(limit -> value.compareTo(limit) < 0).orElse(false)
                || one.upper().map(limit -> value.compareTo(limit) > 0).orElse(false);
        return new Reading(
                one.entry(),
                one.number(),
                one.order(),
                one.vehicleKind(),
                at,
                deviceAt,
                person,
                station,
                one.instrument(),
                one.stage(),
                one.item(),
                one.column(),
                one.joint(),
                one.place(),
                one.unit(),
                value,
                one.target(),
                one.lower(),
                one.upper(),
                failed,
                one.voided());
    }
}
