package wainbook.paper.page;

import java.time.Instant;
import java.util.List;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.paper.PaperSaying.Transcribed;

/**
 * What was typed in, beside its photograph.
 *
 * @param lines what stands on the form, line by line
 * @param lands what would stand at the vehicle
 * @param against what bars this reader from agreeing
 */
public record CompareView(
        FormLine line,
        Transcribed said,
        String transcribedBy,
        Instant transcribedAt,
        List<Fact> lines,
        List<String> lands,
        List<Reason> against,
        Filled filled) {

    /** One line of the form in words. */
    public record Fact(String what, String value, String who, String at) {}

    public String photograph() {
        return "/evidence/" + said.photograph().sha256();
    }

    /** The id that sending it back would have; another than an agreement’s. */
    public java.util.UUID backId() {
        return java.util.UUID.randomUUID();
    }
}
