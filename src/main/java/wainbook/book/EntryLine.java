package wainbook.book;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.book.telling.Grounds;
import wainbook.book.telling.Told;

/**
 * One entry of the record as a line.
 *
 * @param who the name, or the number where there is no name
 * @param room the room its kind belongs to
 * @param came what it came to, where there is a verdict
 * @param grounds what a result stood on
 * @param corrections what was said of it later to correct it
 */
public record EntryLine(
        long number,
        Instant at,
        String who,
        String whoNumber,
        String room,
        String what,
        String value,
        Optional<Told.Verdict> came,
        Grounds grounds,
        String hash,
        List<EntryLine> corrections) {

    public EntryLine {
        corrections = List.copyOf(corrections);
    }

    public String anchor() {
        return "entry-" + number;
    }

    public String shortHash() {
        return hash.substring(0, 8);
    }

    public boolean corrected() {
        return !corrections.isEmpty();
    }

    public boolean judged() {
        return came.isPresent();
    }

    public boolean pass() {
        return came.filter(Told.Verdict::passes).isPresent();
    }

    public String verdict() {
        return came.map(Told.Verdict::word).orElse("");
    }
}
