package wainbook.engineering.measurement;

import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Plain;

/**
 * A rule by which a run of points tells that a process has changed; numbered as L. S. Nelson did, Journal of Quality
 * Technology 16(4), 1984 (seen as software help lists them). On a limit is not beyond it, and equal points break a run.
 */
enum RunRule {
    /** One point beyond three sigma. */
    BEYOND(1) {
        @Override
        boolean completedAt(List<Double> z, int point) {
            return Math.abs(z.get(point)) > 3;
        }
    },
    /** Nine in a row on one side of the centre. */
    ONE_SIDE(2) {
        @Override
        boolean completedAt(List<Double> z, int point) {
            double side = Math.signum(z.get(point));
            return point >= 8
                    && side != 0
                    && IntStream.rangeClosed(point - 8, point).allMatch(one -> Math.signum(z.get(one)) == side);
        }
    },
    /** Six in a row, each above the one before, or each below. */
    TREND(3) {
        @Override
        boolean completedAt(List<Double> z, int point) {
            double way = point >= 5 ? Math.signum(z.get(point) - z.get(point - 1)) : 0;
            return way != 0
                    && IntStream.rangeClosed(point - 4, point)
                            .allMatch(one -> Math.signum(z.get(one) - z.get(one - 1)) == way);
        }
    },
    /** Two of three in a row beyond two sigma on the same side, the last of them one of the two. */
    TWO_OF_THREE(5) {
        @Override
        boolean completedAt(List<Double> z, int point) {
            double side = Math.signum(z.get(point));
            return beyondTwo(z.get(point), side)
                    && IntStream.range(Math.max(0, point - 2), point).anyMatch(one -> beyondTwo(z.get(one), side));
        }

        private boolean beyondTwo(double z, double side) {
            return z * side > 2;
        }
    },
    /** Fifteen in a row within one sigma of the centre: less scatter than the chart was made from. */
    TOO_GOOD(7) {
        @Override
        boolean completedAt(List<Double> z, int point) {
            return point >= 14
                    && z.subList(point - 14, point + 1).stream().anyMatch(one -> one != 0)
                    && z.subList(point - 14, point + 1).stream().allMatch(one -> Math.abs(one) < 1);
        }
    };

    private final int number;

    RunRule(int number) {
        this.number = number;
    }

    int number() {
        return number;
    }

    /** @param z each point's distance from the centre in sigma */
    abstract boolean completedAt(List<Double> z, int point);

    /** Distances from the centre in sigma, rounded as everything is that is compared; none where nothing varies. */
    static List<Double> distances(List<Double> values, double centre, double sigma) {
        return values.stream()
                .map(value -> sigma == 0 ? 0.0 : Plain.compared((value - centre) / sigma))
                .toList();
    }
}
