package wainbook.isolation.register;

import java.util.List;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.isolation.fact.Register;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * What the page of the register shows.
 *
 * @param against what stands against this reader's changing it
 */
public record RegisterLook(
        List<Line> lines, Filled filled, List<Reason> against, List<Option> sorts, List<Option> people, String search) {

    /** One numbered thing, whose it is and where it hangs. */
    public record Line(Register.Item item, String what, String owner, String at, UUID retireId) {
        boolean holds(String text) {
            String all = item.number() + " " + what + " " + owner + " " + at;
            return all.toLowerCase(Words.LOCALE).contains(text.toLowerCase(Words.LOCALE));
        }
    }

    static String what(Register.Sort sort) {
        return Words.of("isolating.sort." + sort.name());
    }
}
