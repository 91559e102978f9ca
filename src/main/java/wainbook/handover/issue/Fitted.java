package wainbook.handover.issue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.handover.issue.Figures.StageItem;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.SoftwareRead;
import wainbook.station.StationSaying.Voided;
import wainbook.station.serial.StandingSerials;

/** What is aboard: parts by serial and lot as they stand, and software as it was read last. */
final class Fitted {

    private static final String PACK = "PACK-";

    private Fitted() {}

    static List<Map<String, Object>> all(History history) {
        return Stream.concat(serials(history), lots(history)).toList();
    }

    static List<Map<String, Object>> packs(History history) {
        return serials(history)
                .filter(part -> String.valueOf(part.get("part")).startsWith(PACK))
                .toList();
    }

    static List<Map<String, Object>> software(List<StageItem> items) {
        return items.stream()
                .flatMap(item -> item.passing().stream())
                .map(Entry::saying)
                .filter(SoftwareRead.class::isInstance)
                .map(SoftwareRead.class::cast)
                .map(said -> Map.<String, Object>of("module", said.module(), "version", said.version()))
                .toList();
    }

    private static Stream<Map<String, Object>> serials(History history) {
        return StandingSerials.of(history).byLine().values().stream()
                .flatMap(entry -> StandingSerials.serial(entry).stream())
                .map(serial -> part(serial.part(), serial.number()));
    }

    private static Stream<Map<String, Object>> lots(History history) {
        Set<UUID> voided = new HashSet<>();
        history.saying(Voided.class).forEach(entry -> voided.add(((Voided) entry.saying()).entry()));
        return history.entries().stream()
                .filter(entry -> !voided.contains(entry.id()))
                .map(Entry::saying)
                .filter(Fitted::isLot)
                .map(LotUsed.class::cast)
                .map(said -> part(said.part(), said.lot()))
                .distinct();
    }

    private static boolean isLot(Saying saying) {
        return saying instanceof LotUsed;
    }

    private static Map<String, Object> part(String part, String number) {
        return Map.of("part", part, "number", number);
    }
}
