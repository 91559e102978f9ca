package wainbook.handover.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A signature as whole numbers: strokes of points, x from 0 to {@value #WIDTH}, y from 0 to {@value #HEIGHT} from above. The
 * drawing is made here from the numbers, so that nothing of what was sent is ever shown.
 */
public record Strokes(List<List<List<Integer>>> all) {

    public static final int WIDTH = 1000;
    public static final int HEIGHT = 300;

    private static final int MOST_STROKES = 100;
    private static final int MOST_POINTS = 4000;
    private static final int LONGEST_TEXT = 80_000;

    /** Less is a dot or a tick of the finger by mistake; common practice, no source. */
    private static final int FEWEST_POINTS = 8;

    private static final int NARROWEST = 60;

    private static final ObjectMapper JSON = new ObjectMapper();

    public Strokes {
        all = List.copyOf(all);
    }

    /** Empty where the text holds no drawing within its bounds. */
    public static Optional<Strokes> read(String text) {
        if (text.length() > LONGEST_TEXT) {
            return Optional.empty();
        }
        try {
            var all = JSON.readValue(text, new TypeReference<List<List<List<Integer>>>>() {});
            return all != null && sound(all) ? Optional.of(new Strokes(all)) : Optional.empty();
        } catch (JsonProcessingException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean sound(List<List<List<Integer>>> all) {
        return all.size() <= MOST_STROKES
                && all.stream().allMatch(stroke -> stroke != null && !stroke.isEmpty())
                && all.stream().mapToInt(List::size).sum() <= MOST_POINTS
                && points(all).allMatch(Strokes::isPoint);
    }

    private static boolean isPoint(List<Integer> point) {
        return point != null && point.size() == 2 && within(point.get(0), WIDTH) && within(point.get(1), HEIGHT);
    }

    private static boolean within(Integer value, int most) {
        return value != null && value >= 0 && value <= most;
    }

    private static Stream<List<Integer>> points(List<List<List<Integer>>> all) {
        return all.stream().flatMap(List::stream);
    }

    /** Whether it can be somebody's signature at all. */
    public boolean isDrawn() {
        var across = points(all).mapToInt(point -> point.get(0)).summaryStatistics();
        return across.getCount() >= FEWEST_POINTS && across.getMax() - across.getMin() >= NARROWEST;
    }

    public byte[] svg() {
        String path = all.stream()
                .map(stroke -> stroke.stream()
                        .map(point -> point.get(0) + " " + point.get(1))
                        .collect(Collectors.joining(" L", "M", "")))
                .collect(Collectors.joining(" "));
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " " + HEIGHT
                        + "\" width=\"" + WIDTH + "\" height=\"" + HEIGHT + "\"><rect width=\"" + WIDTH + "\" height=\""
                        + HEIGHT + "\" fill=\"#ffffff\"/><path d=\"" + path
                        + "\" fill=\"none\" stroke=\"#111111\" stroke-width=\"5\" stroke-linecap=\"round\""
                        + " stroke-linejoin=\"round\"/></svg>\n")
                .getBytes(StandardCharsets.UTF_8);
    }
}
