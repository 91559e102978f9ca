package wainbook.quality.containment.page;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.quality.QualitySaying.Place;

/** Reads what a form sends for a reading: {@code entry:place}. */
final class Chosen {

    private Chosen() {}

    static List<Place> places(List<String> keys) {
        return Optional.ofNullable(keys).orElse(List.of()).stream()
                .flatMap(key -> place(key).stream())
                .toList();
    }

    private static Optional<Place> place(String key) {
        String[] parts = key.split(":", 2);
        try {
            return parts.length < 2
                    ? Optional.empty()
                    : Optional.of(new Place(UUID.fromString(parts[0]), Integer.parseInt(parts[1])));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }
}
