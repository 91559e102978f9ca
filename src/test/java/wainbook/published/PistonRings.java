package wainbook.published;

import java.util.Arrays;
import java.util.List;

/**
 * Inside diameters of 125 piston rings in 25 groups of five, in millimetres: D. C. Montgomery, Introduction to Statistical
 * Quality Control, as open-source control-chart software carries them. Written as thousandths above 74 mm.
 */
final class PistonRings {

    private static final String THOUSANDTHS = "30 2 19 -8 8|-5 -8 1 11 4|-12 24 21 5 2|2 -4 -7 15 9|-8 7 15 -11 14"
            + "|9 -6 -3 -15 -7|-5 6 -6 0 5|-15 3 -7 15 -12|8 -5 9 5 4|-2 0 -10 7 -5|-6 -2 -6 -5 -10|4 0 7 0 -4"
            + "|-17 2 -2 -3 12|6 -33 -6 0 -16|12 14 -2 -1 7|0 -16 5 -2 -4|-6 12 -14 5 7|6 10 18 3 0|-16 2 3 5 -3"
            + "|0 10 13 20 3|-12 1 9 5 -4|4 -1 -10 6 9|10 -11 -10 9 14|15 8 -7 0 10|-18 -16 -5 17 13";

    private PistonRings() {}

    static List<List<Double>> groups() {
        return Arrays.stream(THOUSANDTHS.split("\\|"))
                .map(group -> Arrays.stream(group.split(" "))
                        .map(one -> (74_000 + Integer.parseInt(one)) / 1000.0)
                        .toList())
                .toList();
    }

    static List<Double> values() {
        return groups().stream().flatMap(List::stream).toList();
    }
}
