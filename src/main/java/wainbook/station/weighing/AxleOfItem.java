package wainbook.station.weighing;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which axle an item of a sheet weighs, by its key. {@code weigh-axle-1} to {@code weigh-axle-4} count from the front and fit every
 * vehicle. {@code weigh-front}, {@code weigh-rear} and {@code weigh-tag} are the foremost axle, and the first and second behind those at
 * the front.
 */
final class AxleOfItem {

    private static final Pattern NUMBERED = Pattern.compile("weigh-axle-([1-4])");

    private AxleOfItem() {}

    /**
     * Empty where the item weighs no single axle.
     *
     * @param frontAxles how many axles stand in front: two where two are steered
     * @return 1 the foremost
     */
    static Optional<Integer> axle(String item, int frontAxles) {
        Matcher numbered = NUMBERED.matcher(item);
        if (numbered.matches()) {
            return Optional.of(Integer.valueOf(numbered.group(1)));
        }
        return switch (item) {
            case "weigh-front" -> Optional.of(1);
            case "weigh-rear" -> Optional.of(frontAxles + 1);
            case "weigh-tag" -> Optional.of(frontAxles + 2);
            default -> Optional.empty();
        };
    }
}
