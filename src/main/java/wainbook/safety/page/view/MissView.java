package wainbook.safety.page.view;

import java.util.List;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.PersonInWords;
import wainbook.works.PersonRow;

/**
 * One near miss with what can be done about it.
 *
 * @param againstLooking what stands against naming who sees to it, by whoever looks
 */
public record MissView(MissLine line, List<Reason> againstLooking, List<Reason> againstClosing, Filled filled) {

    /** Who can see to it. */
    public List<Option> owners() {
        return PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .map(row ->
                        new Option(row.number, Words.of("safety.person", PersonInWords.name(row.number), row.number)))
                .toList();
    }
}
