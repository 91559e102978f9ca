package wainbook.line.awaited;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.LineSaying.PartCame;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * A part that is missing for a stage of a vehicle, or was.
 *
 * @param number by which the vehicle's record calls it
 * @param code of the part in the stage's check sheet; empty for what no item names
 * @param expectedOn by what was said last
 * @param since when it was first said to be missing
 * @param came empty while it is awaited
 * @param remark made when it came; may be blank
 */
public record AwaitedPart(
        int number,
        String stage,
        String what,
        Optional<String> code,
        LocalDate expectedOn,
        Instant since,
        Optional<Instant> came,
        String remark) {

    static AwaitedPart of(PartAwaited said, Instant at) {
        return new AwaitedPart(
                said.awaited(), said.stage(), said.what(), said.part(), said.expectedOn(), at, Optional.empty(), "");
    }

    AwaitedPart expected(LocalDate day) {
        return new AwaitedPart(number, stage, what, code, day, since, came, remark);
    }

    AwaitedPart came(PartCame said, Instant at) {
        return new AwaitedPart(number, stage, what, code, expectedOn, since, Optional.of(at), said.remark());
    }

    public boolean isOpen() {
        return came.isEmpty();
    }

    public boolean late(LocalDate today) {
        return isOpen() && expectedOn.isBefore(today);
    }

    /** What it is, with its code. */
    public String named() {
        return code.map(known -> Words.of("line.awaitedNamed", what, known)).orElse(what);
    }

    /** One clause for people who look at the vehicle. */
    public String sentence(LocalDate today) {
        return Words.of(
                late(today) ? "line.awaitedSentenceLate" : "line.awaitedSentence", named(), Formats.day(expectedOn));
    }

    public static String path(String order) {
        return "/orders/" + order + "/awaited";
    }
}
