package wainbook.gate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Limits;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/** What an inspector looks at before all else: what went wrong on the way, and what passed only just. */
final class LookFirst {

    /** The outer part of the span between two limits that counts as near one: 20 % of it, a works rule. */
    private static final BigDecimal NEAR = new BigDecimal("0.2");

    /** One thing to look at. */
    public record Point(String item, String title, String why) {
        Point times(int count) {
            return new Point(item, title, Words.of("gate.firstTimes", why, count));
        }
    }

    private LookFirst() {}

    static List<Point> at(StageRecord record) {
        var points = new ArrayList<Point>();
        for (ItemState state : record.items()) {
            for (Entry entry : state.entries()) {
                why(entry)
                        .ifPresent(why ->
                                points.add(new Point(state.key(), state.item().title(), why)));
            }
            switch (state.status()) {
                case CONCEDED -> points.add(point(state, "gate.firstConceded"));
                case CARRIED_OVER -> points.add(point(state, "gate.firstCarriedOver"));
                case HANDED_ON -> points.add(point(state, "gate.firstHandedOn"));
                case RE_SEQUENCED -> points.add(point(state, "gate.firstReSequenced"));
                case NOT_APPLICABLE, FACTS_MISSING, OPEN, WAITING, FAILED, NONCONFORMING, STALE, PASSED -> {}
            }
        }
        return folded(points);
    }

    /** The same said of one item several times is said once, with how often. */
    private static List<Point> folded(List<Point> points) {
        var often = new LinkedHashMap<Point, Integer>();
        points.forEach(point -> often.merge(point, 1, Integer::sum));
        return often.entrySet().stream()
                .map(known ->
                        known.getValue() == 1 ? known.getKey() : known.getKey().times(known.getValue()))
                .toList();
    }

    private static Point point(ItemState state, String key) {
        return new Point(state.key(), state.item().title(), Words.of(key));
    }

    private static Optional<String> why(Entry entry) {
        if (entry.saying() instanceof Voided voided) {
            return Optional.of(Words.of("gate.firstVoided", voided.reason()));
        }
        if (entry.saying() instanceof TakenFromPaper paper) {
            return Optional.of(Words.of("gate.firstFromPaper", paper.form()));
        }
        if (entry.saying() instanceof Observed) {
            return Optional.of(Words.of("gate.firstObserved"));
        }
        if (entry.saying() instanceof Result result && result.verdict() == Verdict.FAIL) {
            return Optional.of(Words.of("gate.firstFailed"));
        }
        return near(entry) ? Optional.of(Words.of("gate.firstNear")) : Optional.empty();
    }

    private static boolean near(Entry entry) {
        if (entry.saying() instanceof Measured measured) {
            return measured.works()
                    .filter(limits -> near(limits, measured.reading()))
                    .isPresent();
        }
        if (entry.saying() instanceof Tightened joint) {
            Joint.Window window = joint.torque().limitsNm();
            Limits limits = Limits.between(window.lower(), window.upper());
            return joint.boltsNm().stream().anyMatch(torque -> near(limits, torque));
        }
        return false;
    }

    private static boolean near(Limits limits, BigDecimal reading) {
        if (limits.lower().isEmpty() || limits.upper().isEmpty()) {
            return false;
        }
        BigDecimal margin = limits.upper()
                .get()
                .subtract(limits.lower().get())
                .multiply(NEAR)
                .divide(BigDecimal.valueOf(2));
        return reading.subtract(limits.lower().get()).compareTo(margin) < 0
                || limits.upper().get().subtract(reading).compareTo(margin) < 0;
    }
}
