package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying.SourceRecorded;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.order.returning.BroughtAlong;

/** A vehicle comes back with every source that was ever fitted in it: it can be live from the first minute. */
@ApplicationScoped
class SourcesBrought implements BroughtAlong {

    @Override
    public List<Saying> of(History earlier) {
        return Isolation.of(earlier).aboard().stream()
                .<Saying>map(SourceRecorded::new)
                .toList();
    }
}
