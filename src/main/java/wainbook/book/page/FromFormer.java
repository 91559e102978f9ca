package wainbook.book.page;

import java.time.Instant;
import java.util.List;

/**
 * What is open still from the vehicle’s former record.
 *
 * @param order the former one
 */
public record FromFormer(String order, List<Line> lines) {

    /**
     * One open matter.
     *
     * @param standing how it stands, in words: what it holds, or that it bars nothing here
     * @param who must act
     * @param path where it is settled
     */
    public record Line(
            String title,
            String what,
            Instant since,
            String standing,
            String sign,
            String meaning,
            String who,
            String path) {}

    public FromFormer {
        lines = List.copyOf(lines);
    }
}
