package wainbook.quality.record;

import java.time.LocalDate;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.quality.QualitySaying.StatisticsAgreed;
import wainbook.quality.QualitySaying.StatisticsEnded;

/** The works' agreement to statistics by person, as it stands. Without one there are none. */
public record Agreement(Entry entry, StatisticsAgreed said) {

    /** The one that was recorded last, unless it was ended. It may have run out. */
    static Optional<Agreement> of(History works) {
        Optional<Agreement> standing = Optional.empty();
        for (Entry entry : works.entries()) {
            if (entry.saying() instanceof StatisticsAgreed said) {
                standing = Optional.of(new Agreement(entry, said));
            } else if (entry.saying() instanceof StatisticsEnded) {
                standing = Optional.empty();
            }
        }
        return standing;
    }

    public boolean holdsOn(LocalDate day) {
        return !day.isAfter(said.until());
    }

    public boolean lets(String person) {
        return said.readers().contains(person);
    }
}
