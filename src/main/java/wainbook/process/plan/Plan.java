package wainbook.process.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * How a vehicle of one variant is isolated. A released revision never changes.
 *
 * @param sources what can make the vehicle live when the isolation begins, in the order of opening
 * @param later sources that the work itself will bring aboard, such as packs to be landed
 * @param points where the dead state is proved; a point counts as soon as its source counts
 * @param waitMinutes shortest time from the last source opened to the proof, at least 1
 * @param maximumVolt highest voltage of the system, in volts: what the tester must be rated for
 * @param mayTravel whether the vehicle may be moved with its locks on: driveline parted, no traction possible
 * @param restoration what is checked before the last lock comes off
 */
public record Plan(
        String code,
        int revision,
        String variant,
        List<Source> sources,
        List<Source> later,
        List<Point> points,
        int waitMinutes,
        BigDecimal maximumVolt,
        boolean mayTravel,
        List<Check> restoration) {

    public Plan {
        sources = List.copyOf(sources);
        later = List.copyOf(later);
        points = List.copyOf(points);
        restoration = List.copyOf(restoration);
        require(revision > 0, "a revision counts from 1");
        require(!sources.isEmpty(), "a plan names at least one source");
        require(!points.isEmpty(), "a plan names at least one point to prove dead");
        require(waitMinutes > 0, "a plan stores its waiting time");
        require(maximumVolt.signum() > 0, "the highest voltage is above zero");
        require(
                restoration.stream().anyMatch(check -> !check.onlyIfOpened()),
                "a plan names at least one check that is always made before restoration");
        var known = new HashSet<String>();
        sources.forEach(source -> require(known.add(source.code()), "source twice: " + source.code()));
        later.forEach(source -> require(known.add(source.code()), "source twice: " + source.code()));
        var named = new HashSet<String>();
        points.forEach(point -> require(named.add(point.code()), "point twice: " + point.code()));
        points.forEach(point -> require(known.contains(point.source()), "no such source: " + point.source()));
        var proved = points.stream().map(Point::source).toList();
        known.forEach(source -> require(proved.contains(source), "source proved nowhere: " + source));
    }

    /** The sources that count once the given later ones are aboard. */
    public List<Source> sourcesWith(Collection<String> landed) {
        var all = new ArrayList<>(sources);
        later.stream().filter(source -> landed.contains(source.code())).forEach(all::add);
        return all;
    }

    /** The points that must be proved once the given later sources are aboard. */
    public List<Point> pointsWith(Collection<String> landed) {
        var aboard = sourcesWith(landed).stream().map(Source::code).toList();
        return points.stream().filter(point -> aboard.contains(point.source())).toList();
    }

    public boolean foresees(String source) {
        return later.stream().anyMatch(known -> known.code().equals(source));
    }

    public Optional<Source> source(String code) {
        return sourcesWith(later.stream().map(Source::code).toList()).stream()
                .filter(source -> source.code().equals(code))
                .findFirst();
    }

    public Optional<Point> point(String code) {
        return points.stream().filter(point -> point.code().equals(code)).findFirst();
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
