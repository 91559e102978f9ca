package wainbook.handover.record.page;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.handover.record.HandoverRecord.Piece;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.page.Formats;

/** An instruction with names of people, where they are still kept. */
public record InstructionLine(Instructed said, Piece<Instructed> piece, String drivers, String workshop) {

    static InstructionLine of(Piece<Instructed> piece) {
        Instructed said = piece.said();
        UUID entry = piece.entry().id();
        return new InstructionLine(
                said,
                piece,
                names(said.drivers(), entry, 0),
                names(said.workshop(), entry, said.drivers().size()));
    }

    private static String names(List<Outsider> people, UUID entry, int from) {
        return IntStream.range(0, people.size())
                .mapToObj(place -> RecordLook.called(people.get(place).token(), entry, from + place))
                .collect(Collectors.joining(", "));
    }

    public String topics() {
        return String.join(", ", said.topics());
    }

    public String on() {
        return Formats.date(said.on());
    }
}
