package wainbook.station.paper;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.station.StationSaying.Figure;

/**
 * What a paper says of one check item.
 *
 * @param doer the person’s number
 * @param doneAt to the minute
 * @param typed what stands in each of the item’s blanks, by its name; an item that is only done has none
 */
public record PaperLine(String item, String doer, Instant doneAt, Optional<String> instrument, List<Figure> typed) {

    public PaperLine {
        typed = typed == null ? List.of() : List.copyOf(typed);
    }

    Map<String, String> byName() {
        Map<String, String> fields = new LinkedHashMap<>();
        typed.forEach(figure -> fields.put(figure.name(), figure.value()));
        return fields;
    }
}
