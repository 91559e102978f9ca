package wainbook.isolation.step;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Asked;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;

/**
 * A step that somebody asks to take at one vehicle.
 *
 * @param password the asker's own, for steps that are signed
 * @param lookedAt the number of the vehicle’s stream when the asker looked; a signed step is refused when more was said since
 */
public record ToTake(UUID id, String order, Wanted wanted, Optional<String> password, Optional<Long> lookedAt)
        implements Asked {

    @Override
    public List<Subject> writes() {
        return List.of(Subject.workOrder(order));
    }

    @Override
    public Class<? extends Saying> says() {
        return IsolationSaying.class;
    }

    /** Only what is signed judges a whole; making safe is never refused because a page is old. */
    @Override
    public Optional<Long> seen() {
        return lookedAt.filter(number -> TakeStep.SIGNED.contains(Wanted.step(wanted.getClass())));
    }
}
