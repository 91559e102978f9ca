package wainbook.handover.issue.page;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.issue.Template;
import wainbook.page.Filled;
import wainbook.page.Option;

/**
 * The text of one document, and how it reads for a vehicle.
 *
 * @param orders a text can be tried on
 * @param html of what stands in the form; empty where it cannot be filled
 * @param broken why
 * @param changes whether this person releases texts
 */
public record TextView(
        Template template,
        List<Option> orders,
        Optional<String> html,
        List<Reason> broken,
        boolean changes,
        Filled filled) {

    public RawString shown() {
        return new RawString(html.orElse(""));
    }
}
