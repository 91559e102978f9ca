package wainbook.book.set;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.book.BookSaying.SetFrozen;
import wainbook.book.Volume;
import wainbook.book.set.HandoverSet.Packed;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

/**
 * Freezes the handover set of a vehicle that was handed over: its bytes are kept as evidence, and the record says their
 * fingerprints. Long work; the record is locked only when the bytes are there.
 */
@ApplicationScoped
public class Freezing {

    private static final int TIMEOUT_S = 600;
    static final String ZIP = "application/zip";
    static final String PDF = "application/pdf";

    /**
     * What is asked.
     *
     * @param seen the number of the stream when the clerk looked: a set is never of a record that grew meanwhile
     */
    public record ToFreeze(UUID id, String order, Optional<Long> seen) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return SetFrozen.class;
        }
    }

    private final Ledger ledger;
    private final HandoverSet set;
    private final EvidenceFiles files;

    Freezing(Ledger ledger, HandoverSet set, EvidenceFiles files) {
        this.ledger = ledger;
        this.set = set;
        this.files = files;
    }

    public Outcome<Entry> freeze(ToFreeze asked, Actor actor) {
        History before = ledger.history(Subject.workOrder(asked.order()));
        boolean sentBefore = before.entry(asked.id()).isPresent();
        List<Reason> against = sentBefore ? List.of() : FreezeRules.against(before);
        if (!against.isEmpty()) {
            return Outcome.refused(against);
        }
        if (sentBefore) {
            return ledger.write(asked, actor, reading -> {
                throw new IllegalStateException("an entry that is there is not decided again");
            });
        }
        return QuarkusTransaction.requiringNew()
                .timeout(TIMEOUT_S)
                .call(() -> set.of(asked.order()))
                .map(packed -> keep(asked, actor, packed))
                .orElseGet(() -> Outcome.refused(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order())));
    }

    private Outcome<Entry> keep(ToFreeze asked, Actor actor, Packed packed) {
        EvidenceFile zip = files.keep(packed.zip(), ZIP);
        EvidenceFile merged = files.keep(packed.merged(), PDF);
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            History now = reading.of(order);
            List<Reason> against = FreezeRules.against(now);
            if (!against.isEmpty()) {
                return Decision.refuse(against);
            }
            if (!now.endsWith(packed.head())) {
                return Decision.refuse(Reason.of("book.setGrew", Reason.WORKS_RULE, packed.upTo(), now.number()));
            }
            int volume = Volume.of(now).size() + 1;
            return Decision.say(order, new SetFrozen(volume, zip, merged, packed.upTo(), packed.head()));
        });
    }
}
