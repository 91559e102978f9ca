package wainbook.safety.stop;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Announcement;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.permit.Where;
import wainbook.process.Releases;
import wainbook.process.Station;
import wainbook.works.shift.WorksDay;

/** Says on every page where work is stopped, to whoever is signed in. */
@ApplicationScoped
public class StopsAnnounced implements Announcement {

    private final Releases releases;
    private final WorksDay day;

    StopsAnnounced(Releases releases, WorksDay day) {
        this.releases = releases;
        this.day = day;
    }

    @Override
    public Optional<String> text() {
        // Who is turned away is told so on the thread that takes requests in, which must not wait for the database.
        if (!BlockingOperationControl.isBlockingAllowed()) {
            return Optional.empty();
        }
        List<StopRow> open = QuarkusTransaction.joiningExisting().call(StopRow::open);
        Formats formats = new Formats(day.zone());
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(Words.of(
                        "safety.announced",
                        open.stream()
                                .map(row -> Words.of("safety.announcedOne", place(row), formats.clock(row.since)))
                                .collect(Collectors.joining("; "))));
    }

    @Override
    public boolean toStrangers() {
        return false;
    }

    @Override
    public Optional<String> path() {
        return Optional.of("/safety#stops");
    }

    private String place(StopRow row) {
        if (!row.vehicle.equals(Where.WORKS)) {
            return row.vehicle;
        }
        return Optional.ofNullable(row.station)
                .map(code -> releases.station(code).map(Station::title).orElse(code))
                .orElseGet(() -> Words.of("safety.placeNotSaid"));
    }
}
