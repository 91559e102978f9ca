package wainbook.handover.record.page;

import java.util.List;
import java.util.Optional;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.Receipt;
import wainbook.handover.record.RecordRules;
import wainbook.handover.record.RecordSaying;
import wainbook.page.api.Problem;

/**
 * A record as it stands.
 *
 * @param content the fingerprint of what a receiver is shown: a receipt names it
 * @param receipt the receipt that counts
 * @param against what stands against handing over
 */
public record RecordKnown(
        String content,
        Optional<RecordSaying> state,
        Optional<RecordSaying> things,
        List<RecordSaying> pictures,
        List<RecordSaying> openSnags,
        List<RecordSaying> instructions,
        Optional<RecordSaying> warranty,
        Optional<Integer> receipt,
        List<Problem.Ground> against) {

    static RecordKnown of(RecordRules rules) {
        var record = rules.record();
        return new RecordKnown(
                rules.shown().fingerprint(),
                record.state().map(Piece::said),
                record.things().map(Piece::said),
                said(record.pictures()),
                said(record.openSnags()),
                said(record.instructions()),
                record.warranty().map(Piece::said),
                rules.counting().map(Receipt::number),
                rules.handedOver()
                        ? List.of()
                        : rules.against().stream().map(Problem.Ground::of).toList());
    }

    private static List<RecordSaying> said(List<? extends Piece<? extends RecordSaying>> pieces) {
        return pieces.stream().<RecordSaying>map(Piece::said).toList();
    }
}
