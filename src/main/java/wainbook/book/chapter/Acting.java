package wainbook.book.chapter;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wainbook.book.telling.Tellings;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.Held;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.TakenFromPaper;

/** Who did something at a vehicle, and by which competences. */
record Acting(Set<String> rooms, Set<Held> competences) {

    /** By number. */
    static Map<String, Acting> in(History history) {
        Map<String, Acting> found = new TreeMap<>();
        for (Entry entry : history.entries()) {
            Acting acting = of(found, entry.moment().who());
            acting.rooms.add(Tellings.room(entry.saying()));
            if (entry.saying() instanceof Result result) {
                result.basis().held().ifPresent(acting.competences::add);
            }
            if (entry.saying() instanceof SignedOff signed) {
                signed.held().ifPresent(acting.competences::add);
            }
            if (entry.saying() instanceof Attended attended) {
                of(found, attended.second()).rooms.add(Tellings.room(attended));
            }
            if (entry.saying() instanceof TakenFromPaper paper) {
                of(found, paper.doer()).rooms.add(Tellings.room(paper));
                of(found, paper.transcribedBy()).rooms.add(Tellings.room(paper));
                of(found, paper.comparedBy()).rooms.add(Tellings.room(paper));
            }
        }
        return found;
    }

    private static Acting of(Map<String, Acting> found, String number) {
        return found.computeIfAbsent(number, none -> new Acting(new LinkedHashSet<>(), new LinkedHashSet<>()));
    }
}
