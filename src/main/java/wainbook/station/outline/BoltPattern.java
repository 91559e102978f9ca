package wainbook.station.outline;

import java.util.ArrayList;
import java.util.List;

/**
 * A joint drawn as its fasteners lie: a circle up to twelve as a ring, numbered clockwise from the top; all else in rows,
 * as it is listed. A list gives an order and no place, so that three make one row, and more make two of equal length, or
 * as many as eight a row allow.
 *
 * @param across fasteners in the longest row; round a ring, all of them
 */
public record BoltPattern(boolean ring, int across, List<Bolt> bolts) {

    public static final int RING_MOST = 12;

    public static final int ROW_MOST = 8;

    /**
     * One fastener's fields, with its place in the order of tightening.
     *
     * @param number in the order of tightening, from 1
     * @param position on the joint, from 1
     */
    public record Bolt(int number, int position) {
        public String torqueField() {
            return "bolt" + number;
        }

        public String angleField() {
            return "angle" + number;
        }
    }

    public BoltPattern {
        bolts = List.copyOf(bolts);
    }

    /** By the position of each fastener in the order in which they are tightened. */
    public static BoltPattern of(boolean circle, List<Integer> positions) {
        List<Bolt> bolts = new ArrayList<>();
        for (int position : positions) {
            bolts.add(new Bolt(bolts.size() + 1, position));
        }
        int count = bolts.size();
        boolean ring = circle && count >= 2 && count <= RING_MOST;
        return new BoltPattern(ring, ring ? count : row(count), bolts);
    }

    private static int row(int count) {
        return count <= 3 ? Math.max(1, count) : Math.min(ROW_MOST, (count + 1) / 2);
    }

    /** The names of the style that draws it. */
    public String style() {
        return (ring ? "ring" : "rows") + " of-" + across;
    }
}
