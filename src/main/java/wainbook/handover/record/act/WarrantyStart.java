package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.RecordSaying.WarrantyBegun;
import wainbook.ledger.Asked;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;

/** From when the works answers for its conversion, and for what. */
@ApplicationScoped
public class WarrantyStart {

    private static final int FARTHEST_DAYS = 366;

    public record ToBegin(UUID id, String order, LocalDate from, int odometerKm, String covers) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return WarrantyBegun.class;
        }
    }

    private final AtBay bays;

    WarrantyStart(AtBay bays) {
        this.bays = bays;
    }

    public Outcome<Entry> begin(ToBegin asked, Actor actor) {
        return bays.write(asked, actor, bay -> {
            var against = new ArrayList<Reason>();
            Typed.day(
                            asked.from(),
                            bay.today().minusDays(FARTHEST_DAYS),
                            bay.today().plusDays(FARTHEST_DAYS),
                            "warrantyFrom")
                    .ifPresent(against::add);
            Typed.odometer(asked.odometerKm(), bay.knownKm(), "warrantyKm").ifPresent(against::add);
            Typed.text(asked.covers(), "covers").ifPresent(against::add);
            return bay.say(against, () -> new WarrantyBegun(asked.from(), asked.odometerKm(), asked.covers()));
        });
    }
}
