package wainbook.handover.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.InstructionOmitted;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.PartWithdrawn;
import wainbook.handover.record.RecordSaying.ReceiptMissing;
import wainbook.handover.record.RecordSaying.ReceiptSigned;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.handover.record.RecordSaying.StateRead;
import wainbook.handover.record.RecordSaying.ThingsListed;
import wainbook.handover.record.RecordSaying.WarrantyBegun;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/**
 * The handover record of one vehicle as its entries leave it. Lists keep what was withdrawn, so that numbers go on.
 *
 * @param omitted why nobody is instructed, unless somebody was
 * @param outsiders how many people of others were named so far
 */
public record HandoverRecord(
        Optional<Piece<StateRead>> state,
        Optional<Piece<ThingsListed>> things,
        Optional<Piece<WarrantyBegun>> warranty,
        Optional<Piece<InstructionOmitted>> omitted,
        List<Piece<ConditionPictured>> allPictures,
        List<Piece<SnagAgreed>> allSnags,
        List<Piece<Instructed>> allInstructions,
        List<Receipt> receipts,
        int outsiders) {

    private static final HandoverRecord NONE = new HandoverRecord(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            0);

    /**
     * Something said of it.
     *
     * @param ended by which a snag was closed, or anything withdrawn
     */
    public record Piece<S>(S said, Entry entry, Optional<Entry> ended) {

        static <S> Piece<S> of(S said, Entry entry) {
            return new Piece<>(said, entry, Optional.empty());
        }

        public boolean stands() {
            return ended.isEmpty();
        }

        public boolean withdrawn() {
            return ended.filter(by -> by.saying() instanceof PartWithdrawn).isPresent();
        }

        /** How a snag was closed. */
        public Optional<SnagClosed> closed() {
            return ended.map(Entry::saying).filter(SnagClosed.class::isInstance).map(SnagClosed.class::cast);
        }

        private Piece<S> endedBy(Entry by) {
            return stands() ? new Piece<>(said, entry, Optional.of(by)) : this;
        }
    }

    public HandoverRecord {
        allPictures = List.copyOf(allPictures);
        allSnags = List.copyOf(allSnags);
        allInstructions = List.copyOf(allInstructions);
        receipts = List.copyOf(receipts);
    }

    public static HandoverRecord of(History history) {
        return history.folded(HandoverRecord.class, NONE, HandoverRecord::and);
    }

    public List<Piece<ConditionPictured>> pictures() {
        return allPictures.stream().filter(Piece::stands).toList();
    }

    public List<Piece<Instructed>> instructions() {
        return allInstructions.stream().filter(Piece::stands).toList();
    }

    public List<Piece<SnagAgreed>> openSnags() {
        return allSnags.stream().filter(Piece::stands).toList();
    }

    /** Open and closed, not those withdrawn. */
    public List<Piece<SnagAgreed>> snags() {
        return allSnags.stream().filter(snag -> !snag.withdrawn()).toList();
    }

    public Optional<Receipt> lastReceipt() {
        return receipts.isEmpty() ? Optional.empty() : Optional.of(receipts.get(receipts.size() - 1));
    }

    /** Whether this one is there to be withdrawn. */
    public boolean stands(Sort sort, int number) {
        return switch (sort) {
            case PICTURE -> has(pictures(), ConditionPictured::picture, number);
            case SNAG -> has(openSnags(), SnagAgreed::snag, number);
            case INSTRUCTION -> has(instructions(), Instructed::instruction, number);
        };
    }

    private static <S> boolean has(List<Piece<S>> pieces, ToIntFunction<S> number, int wanted) {
        return pieces.stream().anyMatch(piece -> number.applyAsInt(piece.said()) == wanted);
    }

    private HandoverRecord and(Entry entry) {
        if (!(entry.saying() instanceof RecordSaying)) {
            return this;
        }
        if (entry.saying() instanceof StateRead said) {
            return with(Optional.of(Piece.of(said, entry)), things, warranty, omitted);
        } else if (entry.saying() instanceof ThingsListed said) {
            return with(state, Optional.of(Piece.of(said, entry)), warranty, omitted);
        } else if (entry.saying() instanceof WarrantyBegun said) {
            return with(state, things, Optional.of(Piece.of(said, entry)), omitted);
        } else if (entry.saying() instanceof InstructionOmitted said) {
            return with(state, things, warranty, Optional.of(Piece.of(said, entry)));
        }
        return listed(entry);
    }

    private HandoverRecord listed(Entry entry) {
        if (entry.saying() instanceof ConditionPictured said) {
            return with(more(allPictures, Piece.of(said, entry)), allSnags, allInstructions, outsiders);
        } else if (entry.saying() instanceof SnagAgreed said) {
            return with(allPictures, more(allSnags, Piece.of(said, entry)), allInstructions, outsiders + 1);
        } else if (entry.saying() instanceof Instructed said) {
            int named = said.drivers().size() + said.workshop().size();
            return with(allPictures, allSnags, more(allInstructions, Piece.of(said, entry)), outsiders + named)
                    .with(state, things, warranty, Optional.empty());
        } else if (entry.saying() instanceof SnagClosed said) {
            return with(allPictures, ended(allSnags, SnagAgreed::snag, said.snag(), entry), allInstructions, outsiders);
        } else if (entry.saying() instanceof PartWithdrawn said) {
            return without(said, entry);
        }
        return receipted(entry);
    }

    private HandoverRecord without(PartWithdrawn said, Entry entry) {
        return switch (said.sort()) {
            case PICTURE ->
                with(
                        ended(allPictures, ConditionPictured::picture, said.piece(), entry),
                        allSnags,
                        allInstructions,
                        outsiders);
            case SNAG ->
                with(allPictures, ended(allSnags, SnagAgreed::snag, said.piece(), entry), allInstructions, outsiders);
            case INSTRUCTION ->
                with(
                        allPictures,
                        allSnags,
                        ended(allInstructions, Instructed::instruction, said.piece(), entry),
                        outsiders);
        };
    }

    private HandoverRecord receipted(Entry entry) {
        if (entry.saying() instanceof ReceiptSigned said) {
            return with(more(receipts, Receipt.of(said, entry)), outsiders + 1);
        } else if (entry.saying() instanceof ReceiptMissing said) {
            return with(more(receipts, Receipt.of(said, entry)), outsiders);
        }
        return this;
    }

    private HandoverRecord with(
            Optional<Piece<StateRead>> read,
            Optional<Piece<ThingsListed>> listed,
            Optional<Piece<WarrantyBegun>> begun,
            Optional<Piece<InstructionOmitted>> left) {
        return new HandoverRecord(
                read, listed, begun, left, allPictures, allSnags, allInstructions, receipts, outsiders);
    }

    private HandoverRecord with(
            List<Piece<ConditionPictured>> pictures,
            List<Piece<SnagAgreed>> snags,
            List<Piece<Instructed>> instructions,
            int named) {
        return new HandoverRecord(state, things, warranty, omitted, pictures, snags, instructions, receipts, named);
    }

    private HandoverRecord with(List<Receipt> more, int named) {
        return new HandoverRecord(
                state, things, warranty, omitted, allPictures, allSnags, allInstructions, more, named);
    }

    private static <S> List<Piece<S>> ended(List<Piece<S>> pieces, ToIntFunction<S> number, int wanted, Entry by) {
        return pieces.stream()
                .map(piece -> number.applyAsInt(piece.said()) == wanted ? piece.endedBy(by) : piece)
                .toList();
    }

    private static <S> List<S> more(List<S> list, S one) {
        var more = new ArrayList<>(list);
        more.add(one);
        return more;
    }

    /** The token of the next person of others who is named. */
    public String token(int later) {
        return "O-" + (outsiders + 1 + later);
    }

    public Outsider outsider(int later, String nameHash) {
        return new Outsider(token(later), nameHash);
    }
}
