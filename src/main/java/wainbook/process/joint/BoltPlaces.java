package wainbook.process.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the fasteners of rows or a frame lie, evenly spaced, by their position on the joint. Rows are numbered row by row, a
 * frame clockwise from its first corner.
 */
public record BoltPlaces(List<Place> places) {

    /** Column and row, from 1. */
    public record Place(int column, int row) {}

    public BoltPlaces {
        places = List.copyOf(places);
    }

    /** None for a circle and a list, which say no places. */
    public static BoltPlaces of(Joint joint) {
        int rows = joint.rows().orElse(1);
        return new BoltPlaces(
                switch (joint.order()) {
                    case CIRCLE, LIST -> List.of();
                    case ROWS -> rows(joint.bolts(), rows);
                    case FRAME -> frame((joint.bolts() - 2 * (rows - 2)) / 2, rows);
                });
    }

    public int across() {
        return places.stream().mapToInt(Place::column).max().orElse(0);
    }

    public int down() {
        return places.stream().mapToInt(Place::row).max().orElse(0);
    }

    /**
     * Positions from 1 in the order of tightening, inside out and crosswise: the nearest to the centroid, then the one that
     * is nearest to its mirror image, and so on with those that are left. Of two as near, the one with the lower number. A
     * works rule; the maker's own order always wins.
     */
    public List<Integer> insideOut() {
        double middleColumn = places.stream().mapToInt(Place::column).average().orElse(0);
        double middleRow = places.stream().mapToInt(Place::row).average().orElse(0);
        List<Integer> left =
                new ArrayList<>(IntStream.range(0, places.size()).boxed().toList());
        List<Integer> order = new ArrayList<>();
        while (!left.isEmpty()) {
            int inner = nearest(left, middleColumn, middleRow);
            order.add(take(left, inner));
            if (!left.isEmpty()) {
                Place place = places.get(inner);
                order.add(take(left, nearest(left, 2 * middleColumn - place.column(), 2 * middleRow - place.row())));
            }
        }
        return order;
    }

    private int nearest(List<Integer> left, double column, double row) {
        return left.stream()
                .min(Comparator.<Integer>comparingDouble(
                                index -> squared(places.get(index).column() - column)
                                        + squared(places.get(index).row() - row))
                        .thenComparing(Comparator.naturalOrder()))
                .orElseThrow();
    }

    private static int take(List<Integer> left, int index) {
        left.remove(Integer.valueOf(index));
        return index + 1;
    }

    private static double squared(double value) {
        return value * value;
    }

    private static List<Place> rows(int bolts, int rows) {
        int across = bolts / rows;
        return IntStream.range(0, bolts)
                .mapToObj(index -> new Place(index % across + 1, index / across + 1))
                .toList();
    }

    private static List<Place> frame(int across, int down) {
        List<Place> places = new ArrayList<>();
        for (int column = 1; column <= across; column++) {
            places.add(new Place(column, 1));
        }
        for (int row = 2; row < down; row++) {
            places.add(new Place(across, row));
        }
        for (int column = across; column >= 1; column--) {
            places.add(new Place(column, down));
        }
        for (int row = down - 1; row > 1; row--) {
            places.add(new Place(1, row));
        }
        return places;
    }
}
