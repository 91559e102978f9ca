package wainbook.handover.record;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;

/** Snags agreed at handover that nobody has closed. They bar nothing. */
@ApplicationScoped
class SnagMatters implements Matters {

    private final Ledger ledger;
    private final RecordLook look;

    SnagMatters(Ledger ledger, RecordLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return SnagRow.orders().stream()
                .flatMap(order -> HandoverRecord.of(ledger.history(Subject.workOrder(order))).openSnags().stream()
                        .map(snag -> matter(order, snag, now)))
                .toList();
    }

    private OpenMatter matter(String order, Piece<SnagAgreed> snag, Instant now) {
        SnagAgreed said = snag.said();
        return new OpenMatter(
                Sort.SNAG,
                order,
                Words.of("handover.recordSnag", said.snag()),
                Optional.of(said.place()),
                Words.of("handover.recordSnagWhat", said.defect(), said.remedy()),
                snag.entry().moment().at(),
                List.of(said.owner().map(Owner::person).orElseGet(SnagMatters::operator)),
                Due.on(said.dueOn(), look.today(now)),
                "",
                "/handover/" + order + "/record#snag-" + said.snag());
    }

    private static Owner operator() {
        return new Owner("operator", Words.of("handover.owner.OPERATOR"));
    }
}
