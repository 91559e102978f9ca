package wainbook.station.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.process.joint.BoltPlaces;
import wainbook.process.joint.BoltPlaces.Place;

/**
 * A joint drawn as its fasteners lie: a circle up to twelve as a ring, numbered clockwise from the top; rows and frames as a
 * grid, as far as they fit a page; all else in rows, as it is listed. A list gives an order and no place, so that three make
 * one row, and more make two of equal length, or as many as eight a row allow.
 *
 * @param across fasteners in the longest row; round a ring, all of them
 */
public record BoltPattern(boolean ring, int across, List<Bolt> bolts) {

    public static final int RING_MOST = 12;

    public static final int ROW_MOST = 8;

    public static final int DOWN_MOST = 12;

    /**
     * One fastener's fields, with its place in the order of tightening.
     *
     * @param number in the order of tightening, from 1
     * @param position on the joint, from 1
     * @param place in the grid, where the joint says it
     */
    public record Bolt(int number, int position, Optional<Place> place) {
        public String torqueField() {
            return "bolt" + number;
        }

        public String angleField() {
            return "angle" + number;
        }

        public String checkField() {
            return "check" + number;
        }

        /** The names of the style that puts it in its place. */
        public String style() {
            return place.map(known -> "col-" + known.column() + " row-" + known.row())
                    .orElse("at-" + position);
        }
    }

    public BoltPattern {
        bolts = List.copyOf(bolts);
    }

    /** By the position of each fastener in the order in which they are tightened. */
    public static BoltPattern of(boolean circle, List<Integer> positions) {
        List<Bolt> bolts = bolts(positions, new BoltPlaces(List.of()));
        int count = bolts.size();
        boolean ring = circle && count >= 2 && count <= RING_MOST;
        return new BoltPattern(ring, ring ? count : row(count), bolts);
    }

    /** The same for fasteners whose places are known. */
    public static BoltPattern of(BoltPlaces places, List<Integer> positions) {
        return places.across() > ROW_MOST || places.down() > DOWN_MOST
                ? of(false, positions)
                : new BoltPattern(false, places.across(), bolts(positions, places));
    }

    private static List<Bolt> bolts(List<Integer> positions, BoltPlaces places) {
        List<Bolt> bolts = new ArrayList<>();
        for (int position : positions) {
            Optional<Place> place = places.places().isEmpty()
                    ? Optional.empty()
                    : Optional.of(places.places().get(position - 1));
            bolts.add(new Bolt(bolts.size() + 1, position, place));
        }
        return bolts;
    }

    private static int row(int count) {
        return count <= 3 ? Math.max(1, count) : Math.min(ROW_MOST, (count + 1) / 2);
    }

    /** Whether every fastener stands where it lies on the joint. */
    public boolean grid() {
        return bolts.stream().allMatch(bolt -> bolt.place().isPresent());
    }

    /** The names of the style that draws it. */
    public String style() {
        return (ring ? "ring" : grid() ? "grid" : "rows") + " of-" + across;
    }
}
