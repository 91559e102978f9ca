package wainbook.handover.record.page;

import java.time.LocalDate;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.PersonInWords;

/** A snag with names of people, where they are still kept. */
public record SnagLine(SnagAgreed said, Piece<SnagAgreed> piece, String with, boolean late) {

    public static SnagLine of(Piece<SnagAgreed> piece, LocalDate today) {
        SnagAgreed said = piece.said();
        return new SnagLine(
                said,
                piece,
                RecordLook.called(said.with().token(), piece.entry().id(), 0),
                piece.stands() && said.dueOn().isBefore(today));
    }

    /** The name of the form that closes it. */
    public String form() {
        return "close" + said.snag();
    }

    public boolean open() {
        return piece.stands();
    }

    public String owner() {
        return said.owner().map(PersonInWords::name).orElseGet(() -> Words.of("handover.owner.OPERATOR"));
    }

    public String due() {
        return Formats.date(said.dueOn());
    }
}
