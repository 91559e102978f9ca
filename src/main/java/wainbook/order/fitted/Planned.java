package wainbook.order.fitted;

import java.util.List;
import java.util.Map;
import wainbook.predicate.Answer;
import wainbook.process.sheet.Applicability;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;

/** The parts whose serials are read by the check sheets of a route, as often as they are read: what the route fits. */
public record Planned(List<String> parts) {

    private static final String PACK = "PACK-";

    public Planned {
        parts = List.copyOf(parts);
    }

    /** @param facts of the vehicle, by which items apply; what nobody knows yet counts as applying */
    static Planned of(List<CheckSheet> sheets, Map<String, String> facts) {
        return new Planned(sheets.stream()
                .flatMap(sheet -> sheet.items().stream())
                .filter(item -> item.asks() instanceof Ask.Serial && applies(item, facts))
                .map(item -> ((Ask.Serial) item.asks()).part())
                .toList());
    }

    private static boolean applies(CheckItem item, Map<String, String> facts) {
        return !Applicability.of(item, facts).equals(Answer.of(false));
    }

    static boolean pack(String part) {
        return part.startsWith(PACK);
    }

    public int packs() {
        return (int) parts.stream().filter(Planned::pack).count();
    }

    int of(String part) {
        return (int) parts.stream().filter(part::equals).count();
    }
}
