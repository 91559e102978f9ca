package wainbook.quality.record;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wainbook.quality.reading.Reading;

/**
 * A question about a record, with its working. It says what was seen and how seldom that comes by chance, nothing else.
 *
 * @param person who made the entries
 * @param entries one reading of each entry that it is about, oldest first
 * @param since when it could first be asked
 * @param figures what the words of the rule are filled with, as text
 * @param chance of what was seen, or of more, where all is well; 1 where the rule is no matter of chance
 */
public record Question(
        Rule rule, String person, List<Reading> entries, Instant since, List<String> figures, double chance) {

    public Question {
        entries = List.copyOf(entries);
        figures = List.copyOf(figures);
    }

    /** The same for the same question, however often it is worked out. */
    public UUID id() {
        String named = "question/" + rule + "/" + person + "/"
                + (rule.statistic() ? figures.get(0) : String.valueOf(newest().entry()));
        return UUID.nameUUIDFromBytes(named.getBytes(StandardCharsets.UTF_8));
    }

    public Reading newest() {
        return entries.get(entries.size() - 1);
    }
}
