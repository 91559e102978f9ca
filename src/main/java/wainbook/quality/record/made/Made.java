package wainbook.quality.record.made;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.quality.reading.Reading;

/** One entry with all its readings, in the order in which they were recorded. */
public record Made(List<Reading> readings) {

    public Made {
        readings = List.copyOf(readings);
    }

    /** Entries as they were made. */
    public static List<Made> of(List<Reading> inTime) {
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

    public String person() {
        return first().person();
    }

    public String order() {
        return first().order();
    }

    public Instant at() {
        return first().at();
    }

    public Optional<Instant> deviceAt() {
        return first().deviceAt();
    }

    public Optional<String> station() {
        return first().station();
    }

    public Optional<String> instrument() {
        return first().instrument();
    }

    /** What is read, across vehicles: the joint, or the item of a stage. */
    public String what() {
        return first().joint().orElse(first().stage() + ":" + first().item());
    }

    public int size() {
        return readings.size();
    }

    public List<Double> values() {
        return readings.stream().map(reading -> reading.value().doubleValue()).toList();
    }
}
