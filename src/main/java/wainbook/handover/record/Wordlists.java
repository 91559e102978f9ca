package wainbook.handover.record;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wainbook.handover.record.RecordSaying.ListWorded;
import wainbook.handover.record.RecordSaying.Wordlist;
import wainbook.ledger.History;
import wainbook.page.Words;

/** What is usually given with a vehicle, and what people are usually instructed in, as the works words it. */
public record Wordlists(Map<Wordlist, List<String>> all) {

    public static final int MOST = 30;
    public static final int LONGEST = 80;

    /** @param works the stream of the works */
    public static Wordlists of(History works) {
        Map<Wordlist, List<String>> all = new EnumMap<>(Wordlist.class);
        for (Wordlist list : Wordlist.values()) {
            all.put(list, brought(list));
        }
        works.saying(ListWorded.class)
                .map(entry -> (ListWorded) entry.saying())
                .forEach(said -> all.put(said.wordlist(), said.words()));
        return new Wordlists(all);
    }

    /** As the program brings it: common practice, no source. */
    static List<String> brought(Wordlist list) {
        return lines(Words.of("handover.recordBrought." + list.name()).replace("; ", "\n"));
    }

    /** One a line; empty ones and repetitions are left out. */
    public static List<String> lines(String text) {
        return Arrays.stream(text.split("\\R"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }

    public List<String> things() {
        return all.get(Wordlist.THINGS);
    }

    public List<String> topics() {
        return all.get(Wordlist.TOPICS);
    }
}
