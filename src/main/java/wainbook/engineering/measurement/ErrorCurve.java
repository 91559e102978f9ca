package wainbook.engineering.measurement;

import java.util.List;
import java.util.stream.IntStream;

/** An instrument's error over its range, as one calibration found it: straight between its points, level outside them. */
record ErrorCurve(List<ErrorPoint> points) {

    ErrorCurve {
        points = List.copyOf(points);
    }

    static boolean rising(List<ErrorPoint> points) {
        return IntStream.range(1, points.size())
                .allMatch(one -> points.get(one - 1).nm() < points.get(one).nm());
    }

    /** The error at a reading, as a share of the true value. */
    double at(double nm) {
        int above = (int) points.stream().takeWhile(point -> point.nm() < nm).count();
        if (above == 0 || above == points.size()) {
            return points.get(Math.min(above, points.size() - 1)).errorPercent() / 100;
        }
        ErrorPoint before = points.get(above - 1);
        ErrorPoint after = points.get(above);
        double way = (nm - before.nm()) / (after.nm() - before.nm());
        return (before.errorPercent() + way * (after.errorPercent() - before.errorPercent())) / 100;
    }
}
