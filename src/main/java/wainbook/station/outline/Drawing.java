package wainbook.station.outline;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wainbook.page.Words;
import wainbook.process.outline.Outline;
import wainbook.process.outline.Shape;

/**
 * The vehicle with the marks of its check sheet. A unit of the drawing is a pixel on the narrowest page, where the longest
 * view is as wide as the page; on wider ones everything grows, so that a mark is never smaller than it is here.
 *
 * @param views those on which anything is to be done or was done, in their order
 * @param others those without a mark
 * @param zones with their items, in the order of the sheet
 * @param taken the zone that is looked at
 */
public record Drawing(List<View> views, List<View> others, List<Zone> zones, Optional<Zone> taken) {

    /** Width of the drawing on the narrowest page. */
    public static final int WIDTH = 340;

    /** The smallest place that a gloved finger hits. */
    public static final int TOUCH = 48;

    /** Stands for all items without a place on the drawing. */
    public static final String ELSEWHERE = "-";

    /** A view as it is drawn. */
    public record View(String code, int height, String scale, List<Stroke> strokes, List<Zone> zones) {

        public String title() {
            return Words.of("station.view." + code);
        }

        public String told() {
            return Words.of("station.viewTold." + code);
        }

        /** Whether left and right can be told apart here. */
        public boolean bothSides() {
            return !code.equals("SIDE");
        }
    }

    /** A stroke with the class of its pen. */
    public record Stroke(String pen, String path) {}

    /** A zone with its items, and where it can be touched. */
    public record Zone(
            String name, List<Marked> items, double x, double y, double width, double height, List<Mark> marks) {

        public long open() {
            return items.stream().filter(Marked::open).count();
        }

        public long failed() {
            return items.stream()
                    .filter(item -> item.standing() == Marked.Standing.FAILED)
                    .count();
        }

        public String left() {
            return Units.of(x);
        }

        public String top() {
            return Units.of(y);
        }

        public String across() {
            return Units.of(width);
        }

        public String down() {
            return Units.of(height);
        }

        public boolean placed() {
            return !marks.isEmpty();
        }

        public boolean inHand() {
            return items.stream().anyMatch(Marked::inHand);
        }

        public String title() {
            return name.equals(ELSEWHERE) ? Words.of("station.zoneElsewhere") : name;
        }

        /** As the page's address names it. */
        public String asked() {
            return URLEncoder.encode(name, StandardCharsets.UTF_8);
        }

        /** How much is open, and what failed, in words. */
        public String told() {
            String left = open() == 0
                    ? Words.of("station.zoneDone", items.size())
                    : Words.of("station.zoneOpen", open(), items.size());
            return failed() == 0 ? left : left + ", " + Words.of("station.zoneFailed", failed());
        }
    }

    public static Drawing of(Outline outline, List<Marked> items, Optional<String> taken) {
        double scale = (double) WIDTH / outline.widestMm();
        Map<String, List<Marked>> byZone = new LinkedHashMap<>();
        items.forEach(item -> byZone.computeIfAbsent(zoneOf(item, outline), name -> new ArrayList<>())
                .add(item));
        List<Zone> zones = new ArrayList<>();
        byZone.forEach((name, at) -> zones.add(outline.zone(name)
                .map(place -> placed(place, at, scale))
                .orElseGet(() -> new Zone(name, at, 0, 0, 0, 0, List.of()))));
        zones.sort(Comparator.comparing(zone -> !zone.placed()));
        List<View> drawn = outline.views().stream()
                .map(view -> view(outline, view, zones, scale))
                .toList();
        return new Drawing(
                drawn.stream().filter(view -> !view.zones().isEmpty()).toList(),
                drawn.stream().filter(view -> view.zones().isEmpty()).toList(),
                zones,
                taken.flatMap(name ->
                        zones.stream().filter(zone -> zone.name().equals(name)).findFirst()));
    }

    /** The name under which an item lies, here and in the page's address. */
    public static String zoneOf(Marked item, Outline outline) {
        return item.zone().filter(name -> outline.zone(name).isPresent()).orElse(ELSEWHERE);
    }

    public boolean takes(Zone zone) {
        return taken.filter(zone::equals).isPresent();
    }

    private static Zone placed(Outline.Zone place, List<Marked> items, double scale) {
        double x = place.x() * scale;
        double y = place.y() * scale;
        double width = place.width() * scale;
        double height = place.height() * scale;
        return new Zone(place.name(), items, x, y, width, height, Marks.in(x, y, width, height, items));
    }

    private static View view(Outline outline, Outline.View view, List<Zone> zones, double scale) {
        List<Stroke> strokes = view.shapes().stream()
                .map(shape -> new Stroke(pen(shape), shape.path()))
                .toList();
        List<Zone> here = zones.stream()
                .filter(zone -> outline.zone(zone.name())
                        .filter(place -> place.view() == view.side())
                        .isPresent())
                .toList();
        return new View(
                view.side().name(),
                (int) Math.ceil(view.height() * scale),
                String.format(Locale.ROOT, "%.6f", scale),
                strokes,
                here);
    }

    private static String pen(Shape shape) {
        return shape.pen().name().toLowerCase(Locale.ROOT);
    }
}
