package wainbook.quality.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.quality.reading.Reading;

/** One entry with all its readings, in the order in which they were recorded. */
record Made(List<Reading> readings) {

    Made {
        readings = List.copyOf(readings);
    }

    /** Entries as they were made. */
    static List<Made> of(List<Reading> inTime) {
        Map<UUID, List<Reading>> byEntry = new LinkedHashMap<>();
        inTime.forEach(reading -> byEntry.computeIfAbsent(reading.entry(), none -> new ArrayList<>())
                .add(reading));
        return byEntry.values().stream().map(Made::new).toList();
    }

    private Reading first() {
        return readings.get(0);
    }

    UUID entry() {
        return first().entry();
    }

    String person() {
        return first().person();
    }

    String order() {
        return first().order();
    }

    Instant at() {
        return first().at();
    }

    Optional<Instant> deviceAt() {
        return first().deviceAt();
    }

    Optional<String> station() {
        return first().station();
    }

    Optional<String> instrument() {
        return first().instrument();
    }

    /** What is read, across vehicles: the joint, or the item of a stage. */
    String what() {
        return first().joint().orElse(first().stage() + ":" + first().item());
    }

    int size() {
        return readings.size();
    }

    List<Double> values() {
        return readings.stream().map(reading -> reading.value().doubleValue()).toList();
    }
}
