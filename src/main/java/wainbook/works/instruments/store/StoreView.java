package wainbook.works.instruments.store;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.PersonName;
import wainbook.works.PersonRow;
import wainbook.works.instruments.InstrumentRow;

/** What is out of the store, longest out first, and the forms as they were sent. */
public record StoreView(List<InstrumentRow> rows, Filled filled, Instant now, boolean mayGive) {

    static List<InstrumentRow> out() {
        return InstrumentRow.list("holder is not null order by outSince, code");
    }

    public String state() {
        return Words.of("works.storeState", rows.size());
    }

    public String out(InstrumentRow row) {
        return Formats.duration(Duration.between(row.outSince, now));
    }

    public List<Option> people() {
        return PersonRow.everybody().stream()
                .filter(row -> !row.hasLeft)
                .map(row -> new Option(
                        row.number,
                        PersonName.of(row.number)
                                .map(name -> row.number + ", " + name.fullName)
                                .orElse(row.number)))
                .toList();
    }

    /** The second form's own id: a refused first form keeps its own. */
    public UUID otherId() {
        return UUID.randomUUID();
    }
}
