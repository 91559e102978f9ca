package wainbook.pack.act;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.pack.Pack;
import wainbook.works.Person;

/** Whether a pack may be checked in storage: by somebody instructed, and only one that is in storage. */
final class StorageRule {

    private StorageRule() {}

    static List<Reason> against(History history, Person person, LocalDate today) {
        var against = new ArrayList<Reason>();
        Qualified.INSTRUCTED.against(person, today).ifPresent(against::add);
        String serial = history.subject().code();
        Optional<Pack> pack = Pack.of(history);
        if (pack.flatMap(Pack::received).isEmpty()) {
            against.add(
                    Reason.of("pack.notReceived", Reason.WORKS_RULE, serial).liftedAt("/packs/new?serial=" + serial));
        }
        if (pack.filter(Pack::setAside).isPresent()) {
            against.add(
                    Reason.of("pack.inQuarantine", Reason.WORKS_RULE, serial).liftedAt("/packs/" + serial));
        }
        if (pack.filter(Pack::gone).isPresent()) {
            against.add(Reason.of("pack.sentAway", Reason.WORKS_RULE, serial).liftedAt("/packs/" + serial));
        }
        return against;
    }
}
