package wainbook.book;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.page.Words;

/**
 * One entry of the record as a line.
 *
 * @param who the name, or the number where there is no name
 * @param room the room its kind belongs to
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
        Optional<Boolean> passes,
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
        return passes.isPresent();
    }

    public boolean pass() {
        return passes.orElse(false);
    }

    public String verdict() {
        return passes.map(yes -> Words.of(yes ? "book.pass" : "book.fail")).orElse("");
    }
}
