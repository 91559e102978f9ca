package wainbook.permit.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Moment;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.permit.Permit;
import wainbook.permit.PermitRow;
import wainbook.permit.Permits;
import wainbook.permit.Permitting;
import wainbook.permit.Step;
import wainbook.permit.Where;
import wainbook.permit.paper.PaperPermitRow;
import wainbook.permit.paper.PaperPermits;
import wainbook.works.shift.WorksDay;

/** Reads permits for whoever looks at them. */
@ApplicationScoped
public class PermitLook {

    private static final int OVER = 50;

    private final Ledger ledger;
    private final Permitting permitting;
    private final WorksDay day;

    PermitLook(Ledger ledger, Permitting permitting, WorksDay day) {
        this.ledger = ledger;
        this.permitting = permitting;
        this.day = day;
    }

    ListView list(Moment now) {
        return ledger.drawing(() -> new ListView(
                PermitRow.open().stream().map(row -> line(row, now)).toList(),
                PermitRow.latestOver(OVER).stream().map(row -> line(row, now)).toList(),
                PaperPermitRow.latest(OVER).stream()
                        .flatMap(row -> onPaper(row).stream())
                        .toList()));
    }

    private Optional<PaperPermitLine> onPaper(PaperPermitRow row) {
        return PaperPermits.of(ledger.history(Where.stream(row.vehicle))).all().stream()
                .filter(paper -> paper.form().equals(row.form))
                .findFirst()
                .map(paper -> new PaperPermitLine(row.vehicle, paper));
    }

    /** The open permits of a vehicle, for pages of rooms above. */
    public static List<PermitLine> open(History stream, Instant now, ZoneId zone) {
        return Permits.of(stream).open().stream()
                .map(permit -> new PermitLine(permit, now, new Formats(zone)))
                .toList();
    }

    List<PermitLine> open(Instant now) {
        return PermitRow.open().stream()
                .map(row -> new PermitLine(known(row.vehicle, row.number), now, new Formats(day.zone())))
                .toList();
    }

    private PermitLine line(PermitRow row, Moment now) {
        return line(known(row.vehicle, row.number), now);
    }

    PermitLine line(Permit permit, Moment now) {
        return new PermitLine(permit, now.at(), new Formats(day.zone()));
    }

    Permit known(String vehicle, int number) {
        return Permits.of(ledger.history(Where.stream(vehicle))).number(number).orElseThrow(NotFoundException::new);
    }

    PermitView view(String vehicle, int number, Filled filled, Moment now) {
        Permit permit = known(vehicle, number);
        History stream = ledger.history(permit.subject());
        var words = Optional.of("–");
        return new PermitView(
                line(permit, now),
                Arrays.stream(Step.values())
                        .collect(Collectors.toMap(
                                step -> step, step -> permitting.against(stream, number, step, words, now))),
                permit.open() ? permitting.conflicts(stream, number, now) : List.of(),
                filled);
    }
}
