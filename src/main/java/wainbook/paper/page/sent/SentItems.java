package wainbook.paper.page.sent;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wainbook.paper.page.sheet.Section;
import wainbook.station.StationSaying.Figure;
import wainbook.station.paper.PaperBlank;
import wainbook.station.paper.PaperItem;
import wainbook.station.paper.PaperLine;

/** A print of open items as it was typed over. A line counts once somebody’s number stands beside it. */
public final class SentItems {

    private SentItems() {}

    /** @param printedAt times of day before it are of the next day */
    public static List<PaperLine> read(ByHand hand, List<PaperItem> items, Instant printedAt) {
        hand.begins(printedAt);
        var lines = new ArrayList<PaperLine>();
        for (PaperItem item : items) {
            String who = Section.field("item", item.key(), "who");
            boolean written = hand.text(who).isPresent()
                    || item.blanks().stream()
                            .anyMatch(blank -> hand.text(field(item, blank)).isPresent());
            if (item.onPaper() && written) {
                lines.add(new PaperLine(
                        item.key(),
                        hand.must(who),
                        hand.mustTime(Section.field("item", item.key(), "time")),
                        hand.text(Section.field("item", item.key(), "instrument")),
                        figures(hand, item)));
            }
        }
        return lines;
    }

    public static String field(PaperItem item, PaperBlank blank) {
        return Section.field("item", item.key(), blank.name());
    }

    private static List<Figure> figures(ByHand hand, PaperItem item) {
        return item.blanks().stream()
                .flatMap(blank -> hand.text(field(item, blank)).stream().map(value -> new Figure(blank.name(), value)))
                .toList();
    }
}
