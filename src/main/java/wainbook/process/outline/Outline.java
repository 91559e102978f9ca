package wainbook.process.outline;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * The plain drawing of one kind of vehicle, and the places on it that work is named by.
 *
 * @param vehicleKind as the routes name it
 * @param views each side once at most
 */
public record Outline(String vehicleKind, List<View> views, List<Zone> zones) {

    /** The drawing from one side: a sheet of so many millimetres at the vehicle's own size. */
    public record View(Side side, int width, int height, List<Shape> shapes) {
        public View {
            shapes = List.copyOf(shapes);
            if (width < 1000 || height < 500 || width > Shape.LARGEST_MM || height > Shape.LARGEST_MM) {
                throw new IllegalArgumentException(
                        "a view is 1000 to " + Shape.LARGEST_MM + " mm wide and at least 500 mm high");
            }
        }
    }

    /** A place by the name that check items use, as a rectangle in one of the views. */
    public record Zone(String name, Side view, int x, int y, int width, int height) {
        public Zone {
            if (name.isBlank() || name.length() > 60) {
                throw new IllegalArgumentException("a zone has a name of 1 to 60 characters, not: " + name);
            }
            if (x < 0 || y < 0 || width < 1 || height < 1) {
                throw new IllegalArgumentException("the place of zone " + name + " has no size");
            }
        }

        boolean inside(View drawn) {
            return x + width <= drawn.width() && y + height <= drawn.height();
        }

        public boolean overlaps(Zone other) {
            return view == other.view
                    && x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }
    }

    public Outline {
        views = List.copyOf(views);
        zones = List.copyOf(zones);
        if (!vehicleKind.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            throw new IllegalArgumentException("a kind of vehicle is letters, digits and dashes, not: " + vehicleKind);
        }
        require(!views.isEmpty(), "an outline has at least one view");
        var sides = new HashSet<Side>();
        for (View view : views) {
            require(sides.add(view.side()), "seen twice from the same side: " + view.side());
        }
        var names = new HashSet<String>();
        for (Zone zone : zones) {
            require(names.add(zone.name()), "zone twice: " + zone.name());
            require(
                    views.stream().anyMatch(view -> view.side() == zone.view() && zone.inside(view)),
                    "zone " + zone.name() + " lies outside its view");
            zones.stream()
                    .filter(other -> !other.equals(zone) && other.overlaps(zone))
                    .findFirst()
                    .ifPresent(other -> require(false, "zones overlap: " + zone.name() + ", " + other.name()));
        }
    }

    public Optional<Zone> zone(String name) {
        return zones.stream().filter(zone -> zone.name().equals(name)).findFirst();
    }

    public List<Zone> zonesOf(Side side) {
        return zones.stream().filter(zone -> zone.view() == side).toList();
    }

    /** The longest view: all are drawn to the same scale. */
    public int widestMm() {
        return views.stream().mapToInt(View::width).max().orElseThrow();
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
