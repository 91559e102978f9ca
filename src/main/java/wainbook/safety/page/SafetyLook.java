package wainbook.safety.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.permit.Where;
import wainbook.process.Releases;
import wainbook.safety.miss.Handling;
import wainbook.safety.miss.NearMiss;
import wainbook.safety.miss.NearMisses;
import wainbook.safety.page.view.MissLine;
import wainbook.safety.page.view.MissView;
import wainbook.safety.page.view.SafetyView;
import wainbook.safety.page.view.StopLine;
import wainbook.safety.page.view.StopView;
import wainbook.safety.page.view.Titles;
import wainbook.safety.stop.Stop;
import wainbook.safety.stop.StopRow;
import wainbook.safety.stop.Stopping;
import wainbook.safety.stop.Stops;
import wainbook.safety.visit.Visits;
import wainbook.works.shift.WorksDay;

/** Reads near misses and stops for whoever looks at them. */
@ApplicationScoped
public class SafetyLook {

    private static final int MONTHS = 12;

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Words.LOCALE);

    private final Ledger ledger;
    private final Releases releases;
    private final Handling handling;
    private final Stopping stopping;
    private final WorksDay day;

    SafetyLook(Ledger ledger, Releases releases, Handling handling, Stopping stopping, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.handling = handling;
        this.stopping = stopping;
        this.day = day;
    }

    SafetyView view(Moment now, List<Reason> reasons) {
        return ledger.drawing(() -> new SafetyView(
                openStops(),
                misses(now).stream().filter(line -> line.miss().open()).toList(),
                misses(now).stream().filter(line -> !line.miss().open()).toList(),
                months(now.at()),
                Visits.of(works()).inside().size(),
                reasons));
    }

    List<StopLine> openStops() {
        return StopRow.open().stream()
                .map(row -> line(known(row.vehicle, row.number)))
                .toList();
    }

    /** Every stop, the newest first. */
    List<StopLine> stops() {
        return StopRow.since(Instant.EPOCH).stream()
                .map(row -> line(known(row.vehicle, row.number)))
                .toList();
    }

    /** The newest first. */
    List<MissLine> misses(Moment now) {
        return NearMisses.of(works()).all().stream()
                .sorted(Comparator.comparing(NearMiss::number).reversed())
                .map(miss -> line(miss, now))
                .toList();
    }

    MissLine line(NearMiss miss, Moment now) {
        return new MissLine(
                miss,
                new Titles(releases).where(miss.said().order(), miss.said().station()),
                day.of(now.at()));
    }

    NearMiss miss(int number) {
        return NearMisses.of(works()).number(number).orElseThrow(NotFoundException::new);
    }

    MissView view(int number, Filled filled, Moment now) {
        NearMiss miss = miss(number);
        return new MissView(
                line(miss, now), handling.againstLookingAt(miss, now), handling.againstClosing(miss, now), filled);
    }

    Stop known(String vehicle, int number) {
        return Stops.of(ledger.history(Where.stream(vehicle))).number(number).orElseThrow(NotFoundException::new);
    }

    StopLine line(Stop stop) {
        return new StopLine(
                stop, new Titles(releases).where(stop.order(), stop.said().station()));
    }

    StopView view(String vehicle, int number, Filled filled, Moment now) {
        Stop stop = known(vehicle, number);
        boolean nowhere = stop.order().isEmpty() && stop.said().station().isEmpty();
        return new StopView(
                line(stop),
                stopping.againstLifting(stop, now),
                nowhere && stop.open()
                        ? releases.stations().stream()
                                .filter(station -> station.stage().isPresent())
                                .map(station -> new Option(station.code(), station.title()))
                                .toList()
                        : List.of(),
                filled);
    }

    private List<SafetyView.Month> months(Instant now) {
        ZoneId zone = day.zone();
        YearMonth present = YearMonth.from(now.atZone(zone));
        List<NearMiss> misses = NearMisses.of(works()).all();
        List<StopRow> stops = StopRow.since(
                present.minusMonths(MONTHS - 1L).atDay(1).atStartOfDay(zone).toInstant());
        return IntStream.range(0, MONTHS)
                .mapToObj(present::minusMonths)
                .map(month -> new SafetyView.Month(
                        MONTH.format(month),
                        misses.stream()
                                .filter(miss ->
                                        in(month, miss.reported().moment().at(), zone))
                                .count(),
                        misses.stream()
                                .flatMap(miss -> miss.closed().stream())
                                .filter(entry -> in(month, entry.moment().at(), zone))
                                .count(),
                        stops.stream().filter(row -> in(month, row.since, zone)).count()))
                .filter(month -> month.nearMisses() + month.closed() + month.stops() > 0)
                .toList();
    }

    private static boolean in(YearMonth month, Instant at, ZoneId zone) {
        return YearMonth.from(at.atZone(zone)).equals(month);
    }

    private History works() {
        return ledger.history(Subject.works());
    }
}
