package wainbook.line.stringline;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One vehicle over time.
 *
 * @param stays behind it and the one that lasts, in the order of time
 * @param held when a hold was on it; open ones end now
 * @param ahead stages that it still has to leave, the present one first
 * @param planned when it would leave each stage, a takt at every station
 * @param late will probably miss its promised day
 * @param odds of its promised day, in words; empty if it is finished
 */
public record Track(
        String order,
        String kind,
        List<Stay> stays,
        List<Held> held,
        List<Step> ahead,
        List<Due> planned,
        boolean late,
        Optional<String> odds) {

    public Track {
        stays = List.copyOf(stays);
        held = List.copyOf(held);
        ahead = List.copyOf(ahead);
        planned = List.copyOf(planned);
    }

    /**
     * At one place.
     *
     * @param stage empty off the line
     */
    public record Stay(Optional<String> stage, String place, Instant from, Optional<Instant> to) {}

    public record Due(String stage, Instant outOf) {}

    public record Held(Instant from, Instant to) {}

    /** When it takes a station of a stage and when it leaves it, as forecast. */
    public record Step(String stage, Instant into, Band outOf) {}

    /** 10, 50 and 90 % of the draws. */
    public record Band(Instant tenth, Instant median, Instant ninetieth) {}

    boolean begun() {
        return !stays.isEmpty();
    }

    /** When the last that is known of it ends. */
    Optional<Instant> ends() {
        return ahead.isEmpty()
                ? stays.stream().reduce((former, latter) -> latter).flatMap(Stay::to)
                : Optional.of(ahead.get(ahead.size() - 1).outOf().ninetieth());
    }
}
