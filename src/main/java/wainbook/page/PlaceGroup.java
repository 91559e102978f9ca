package wainbook.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Places that belong together: one entry of the navigation, and beneath it its places while one of them is open.
 *
 * @param key the key of its text
 * @param places never empty; the first is where the entry leads
 */
public record PlaceGroup(String key, List<Place> places) {

    public PlaceGroup {
        places = List.copyOf(places);
    }

    public static PlaceGroup of(String key, Place... places) {
        return new PlaceGroup(key, Arrays.asList(places));
    }

    /** A place by itself. */
    public static PlaceGroup of(Place place) {
        return new PlaceGroup(place.key(), List.of(place));
    }

    /** What is left of it for somebody; empty where that is nothing. */
    Optional<PlaceGroup> only(Predicate<Place> shown) {
        List<Place> left = places.stream().filter(shown).toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(new PlaceGroup(key, left));
    }

    public String path() {
        return places.get(0).path();
    }

    public boolean holds(String present) {
        return places.stream().anyMatch(place -> place.holds(present));
    }

    /** Whether a place is the one that is open: of two that lie one within the other the inner one. */
    public boolean open(Place place, String present) {
        return place.holds(present)
                && places.stream()
                        .noneMatch(other -> other.holds(present)
                                && other.path().length() > place.path().length());
    }

    public boolean branches() {
        return places.size() > 1;
    }
}
