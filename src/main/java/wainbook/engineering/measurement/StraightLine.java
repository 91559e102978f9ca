package wainbook.engineering.measurement;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Least squares through points, by deviations from the means. */
record StraightLine(int n, double meanX, double meanY, double sxx, double sxy, double syy, double squares) {

    static StraightLine through(List<Double> x, List<Double> y) {
        double meanX = x.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double meanY = y.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double sxx =
                x.stream().mapToDouble(one -> (one - meanX) * (one - meanX)).sum();
        double syy =
                y.stream().mapToDouble(one -> (one - meanY) * (one - meanY)).sum();
        double sxy = IntStream.range(0, x.size())
                .mapToDouble(i -> (x.get(i) - meanX) * (y.get(i) - meanY))
                .sum();
        double slope = sxy / sxx;
        double squares = IntStream.range(0, x.size())
                .mapToDouble(i -> y.get(i) - meanY - slope * (x.get(i) - meanX))
                .map(rest -> rest * rest)
                .sum();
        return new StraightLine(x.size(), meanX, meanY, sxx, sxy, syy, squares);
    }

    double freedom() {
        return n - 2.0;
    }

    double slope() {
        return sxy / sxx;
    }

    double intercept() {
        return meanY - slope() * meanX;
    }

    double residualS() {
        return Math.sqrt(squares / freedom());
    }

    /** Nothing is explained where nothing varies. */
    double r2() {
        return syy == 0 ? 0 : 1 - squares / syy;
    }

    double slopeError() {
        return residualS() / Math.sqrt(sxx);
    }

    double interceptError() {
        return residualS() * Math.sqrt(1.0 / n + meanX * meanX / sxx);
    }

    double at(double x) {
        return meanY + slope() * (x - meanX);
    }

    double widening(double x) {
        return Math.sqrt(1 + 1.0 / n + (x - meanX) * (x - meanX) / sxx);
    }

    /** The last place where the line, widened by its interval on the side it moves to, meets the limit on that side. */
    Optional<Double> leaving(double limit, double reach) {
        double side = slope() < 0 ? -1 : 1;
        double rise = side * slope();
        double room = limit - side * meanY;
        if (reach == 0) {
            return Optional.of(meanX + room / rise).filter(Double::isFinite);
        }
        double bend = rise * rise - reach * reach / sxx;
        double rest = room * room - reach * reach * (1 + 1.0 / n);
        double root = Math.sqrt(room * room * rise * rise - bend * rest);
        double way = room > 0 ? rest / (room * rise + root) : (room * rise - root) / bend;
        return Optional.of(meanX + way).filter(day -> Double.isFinite(day) && room - rise * way >= 0);
    }
}
