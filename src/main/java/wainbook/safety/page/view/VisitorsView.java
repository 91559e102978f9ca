package wainbook.safety.page.view;

import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;

/**
 * Who is inside, and who was.
 *
 * @param bars what stands against the reader's being a host
 * @param permit where only visits under one permit are shown
 */
public record VisitorsView(
        List<VisitLine> inside, List<VisitLine> earlier, List<Reason> bars, Optional<String> permit, Moment now) {

    public String permitInWords() {
        return permit.map(VisitLine::permit).orElse("");
    }
}
