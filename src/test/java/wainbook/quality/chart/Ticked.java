package wainbook.quality.chart;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.quality.reading.Reading;

/** Readings of one joint, one vehicle after another. */
final class Ticked {

    private static final Instant FIRST = Instant.parse("2026-03-02T07:00:00Z");

    private final List<Reading> readings = new ArrayList<>();
    private final BigDecimal lower;
    private final BigDecimal upper;

    Ticked(String lower, String upper) {
        this.lower = new BigDecimal(lower);
        this.upper = new BigDecimal(upper);
    }

    Ticked vehicle(double... values) {
        return vehicle(false, values);
    }

    Ticked voided(double... values) {
        return vehicle(true, values);
    }

    private Ticked vehicle(boolean voided, double... values) {
        int vehicle = readings.size();
        for (int i = 0; i < values.length; i++) {
            BigDecimal value = BigDecimal.valueOf(values[i]);
            readings.add(new Reading(
                    UUID.nameUUIDFromBytes(("entry " + vehicle).getBytes(StandardCharsets.UTF_8)),
                    vehicle + 1L,
                    "WB-" + vehicle,
                    "BUS",
                    FIRST.plus(Duration.ofHours(vehicle)),
                    Optional.empty(),
                    "W-1",
                    Optional.of("S-1"),
                    Optional.of("TW-1"),
                    "packs",
                    "frame",
                    0,
                    Optional.of("FRAME"),
                    i + 1,
                    "N·m",
                    value,
                    Optional.empty(),
                    Optional.of(lower),
                    Optional.of(upper),
                    value.compareTo(lower) < 0 || value.compareTo(upper) > 0,
                    voided));
        }
        return this;
    }

    /** The values of others, as of vehicles that follow. */
    Ticked and(Ticked others) {
        others.readings.forEach(one -> vehicle(one.value().doubleValue()));
        return this;
    }

    List<Reading> readings() {
        return readings;
    }

    ItemChart chart() {
        return ItemChart.of(new Charted(Charted.Sort.JOINT, "FRAME"), readings);
    }
}
