package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.pack.PackRow;
import wainbook.pack.WhereFitted;
import wainbook.pack.page.view.PackLine;
import wainbook.pack.page.view.PackLine.Standing;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Packs that somebody must see to: in quarantine, with a watch that is due, or with a check in storage gone by. */
@ApplicationScoped
class PackMatters implements Matters {

    private final WhereFitted fitted;
    private final WorksDay day;

    PackMatters(WhereFitted fitted, WorksDay day) {
        this.fitted = fitted;
        this.day = day;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        Map<String, String> orders = fitted.orders();
        return PackRow.here().stream()
                .map(row -> new PackLine(row, Optional.ofNullable(orders.get(row.serial)), false, now, day.zone()))
                .filter(PackMatters::wanted)
                .map(line -> matter(line, now))
                .toList();
    }

    private static boolean wanted(PackLine line) {
        Standing standing = line.standing();
        return standing != Standing.FITTED && standing != Standing.STORED && standing != Standing.GONE;
    }

    private OpenMatter matter(PackLine line, Instant now) {
        return new OpenMatter(
                Sort.PACK,
                line.order().orElse(""),
                Words.of("pack.matter", line.row().serial),
                Optional.empty(),
                line.standing().word(),
                line.row().since == null ? now : line.row().since,
                List.of(Owner.of(Role.TEAM_LEADER), Owner.of(Role.WORKS_ENGINEER)),
                due(line),
                line.row().setAside ? Words.of("pack.bars") : "",
                line.path());
    }

    private Due due(PackLine line) {
        LocalDate today = day.of(line.now());
        return line.nextWatch()
                .map(time -> new Due(
                        Words.of("pack.watchAt", new Formats(day.zone()).moment(time)),
                        Optional.of(day.of(time)),
                        line.watchLate()))
                .or(() -> line.due().map(date -> Due.on(date, today)))
                .orElseGet(Due::open);
    }
}
