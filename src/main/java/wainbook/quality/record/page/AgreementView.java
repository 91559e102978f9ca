package wainbook.quality.record.page;

import java.util.Optional;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.quality.record.Agreement;

/**
 * The works' agreement to statistics by person.
 *
 * @param holds whether it is in force today
 */
public record AgreementView(Optional<Agreement> agreement, boolean holds, boolean mayRecord, Filled filled) {

    public String until() {
        return Formats.date(agreement.orElseThrow().said().until());
    }
}
