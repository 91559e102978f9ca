package wainbook.safety.page.view;

import java.time.Instant;
import java.util.List;
import wainbook.ledger.Entry;
import wainbook.safety.Nameless;
import wainbook.safety.SafetySaying.NearMissTold;
import wainbook.safety.SafetySaying.StopTold;

/** Words that were added, and by whom. */
public record Told(String words, String who, boolean nameless, Instant at) {

    static List<Told> of(List<Entry> entries) {
        return entries.stream()
                .map(entry -> new Told(
                        words(entry),
                        entry.moment().who(),
                        entry.moment().who().equals(Nameless.SPEAKER),
                        entry.moment().at()))
                .toList();
    }

    private static String words(Entry entry) {
        return entry.saying() instanceof StopTold said ? said.words() : ((NearMissTold) entry.saying()).words();
    }
}
