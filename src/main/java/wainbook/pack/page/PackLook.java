package wainbook.pack.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.act.Moment;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.pack.KeptParts;
import wainbook.pack.Pack;
import wainbook.pack.PackRow;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.Serials;
import wainbook.pack.WhereFitted;
import wainbook.pack.act.Judging;
import wainbook.pack.act.SendingOff;
import wainbook.pack.act.StorageChecking;
import wainbook.pack.page.view.PackLine;
import wainbook.pack.page.view.PackList;
import wainbook.pack.page.view.PackView;
import wainbook.page.Filled;
import wainbook.works.shift.WorksDay;

/** Reads packs for whoever looks at them. */
@ApplicationScoped
public class PackLook {

    private final Ledger ledger;
    private final WorksDay day;
    private final WhereFitted fitted;
    private final StorageChecking checking;
    private final Judging judging;
    private final SendingOff sending;

    PackLook(
            Ledger ledger,
            WorksDay day,
            WhereFitted fitted,
            StorageChecking checking,
            Judging judging,
            SendingOff sending) {
        this.ledger = ledger;
        this.day = day;
        this.fitted = fitted;
        this.checking = checking;
        this.judging = judging;
        this.sending = sending;
    }

    /** Every pack that the works ever had. */
    public List<PackLine> lines(Moment now) {
        Map<String, String> orders = fitted.orders();
        Set<String> held = PackRow.heldLots();
        return PackRow.all().stream()
                .map(row -> new PackLine(
                        row,
                        Optional.ofNullable(orders.get(row.serial)),
                        row.lot != null && held.contains(row.lot) && !row.holdsLot,
                        now.at(),
                        day.zone()))
                .toList();
    }

    PackList list(String search, String standing, boolean mayKeep, Filled keeping, Moment now) {
        List<String> parts = KeptParts.of(ledger.history(Subject.works())).parts().stream()
                .sorted()
                .toList();
        return new PackList(lines(now), search, standing, parts, mayKeep, keeping);
    }

    Pack known(String serial) {
        return Pack.of(ledger.history(Serials.subject(serial))).orElseThrow(NotFoundException::new);
    }

    PackLine line(Pack pack, Moment now) {
        PackRow row = PackRow.known(pack.serial()).orElseThrow(NotFoundException::new);
        return new PackLine(row, fitted.order(pack.serial()), heldBy(pack).isPresent(), now.at(), day.zone());
    }

    private static Optional<String> heldBy(Pack pack) {
        return pack.lot().flatMap(lot -> PackRow.holding(lot, pack.serial()));
    }

    PackView view(String serial, Filled filled, Moment now) {
        Pack pack = known(serial);
        History history = ledger.history(Serials.subject(serial));
        return new PackView(
                line(pack, now),
                pack,
                history.entries(),
                checking.against(history, now),
                Arrays.stream(Judgement.values())
                        .collect(Collectors.toMap(Function.identity(), one -> judging.against(history, one, now))),
                sending.against(history),
                pack.holdsLot() ? ofLot(pack, now) : List.of(),
                heldBy(pack),
                filled);
    }

    private List<PackLine> ofLot(Pack pack, Moment now) {
        Map<String, String> orders = fitted.orders();
        return pack.lot().map(lot -> PackRow.ofLot(lot, pack.serial())).orElse(List.of()).stream()
                .map(row -> new PackLine(row, Optional.ofNullable(orders.get(row.serial)), true, now.at(), day.zone()))
                .toList();
    }
}
