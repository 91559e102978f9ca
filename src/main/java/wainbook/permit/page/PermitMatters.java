package wainbook.permit.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.permit.Permit;
import wainbook.permit.State;

/** Permits that wait for somebody: to be received, handed back or closed, or for the last look for fire. */
@ApplicationScoped
class PermitMatters implements Matters {

    private final PermitLook look;

    PermitMatters(PermitLook look) {
        this.look = look;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return look.open(now).stream()
                .filter(line -> line.state() != State.IN_FORCE)
                .map(PermitMatters::matter)
                .toList();
    }

    private static OpenMatter matter(PermitLine line) {
        Permit permit = line.permit();
        return new OpenMatter(
                Sort.PERMIT,
                line.onVehicle() ? line.where() : "",
                Words.of("permit.permitNumber", permit.number(), line.sort()),
                permit.said().place(),
                Words.of("permit.waitsForLine", line.waitsFor()),
                permit.issued().moment().at(),
                List.of(Owner.person(owner(permit))),
                permit.lastLookFrom()
                        .map(from -> Due.at(line.formats().clock(from)))
                        .orElse(Due.open()),
                permit.traits().isEmpty() ? "" : Words.of("permit.barsOther"),
                line.path());
    }

    /** Whoever must act next: the receiver until the work is surely over, then the issuer. */
    private static String owner(Permit permit) {
        boolean receivers = permit.overAt().isEmpty()
                && (permit.received().isPresent() || permit.stopped().isEmpty());
        return receivers ? permit.said().receiver() : permit.issuer();
    }
}
