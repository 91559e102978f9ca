package wainbook.safety.page.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.safety.miss.NearMiss;

/** A near miss as lists and its own page show it. */
public record MissLine(NearMiss miss, String where, LocalDate today) {

    public String path() {
        return "/safety/near-misses/" + miss.number();
    }

    public String title() {
        return Words.of("safety.missNumber", miss.number());
    }

    public String state() {
        return Words.of("safety.missState." + miss.state().name());
    }

    public String meaning() {
        return switch (miss.state()) {
            case NEW -> "warn";
            case LOOKED_AT -> late() ? "danger" : "quiet";
            case CLOSED -> "safe";
        };
    }

    public String sign() {
        return switch (miss.state()) {
            case NEW -> "alert";
            case LOOKED_AT -> late() ? "clock" : "working";
            case CLOSED -> "done";
        };
    }

    public boolean late() {
        return miss.open() && miss.dueOn().filter(due -> due.isBefore(today)).isPresent();
    }

    public String due() {
        return miss.dueOn().map(Formats::date).orElse("");
    }

    public String what() {
        return words().orElseGet(() -> Words.of("safety.noWords"));
    }

    private Optional<String> words() {
        return miss.said()
                .words()
                .or(() -> miss.told().stream()
                        .findFirst()
                        .map(entry -> ((wainbook.safety.SafetySaying.NearMissTold) entry.saying()).words()));
    }

    public List<Told> told() {
        return Told.of(miss.told());
    }

    /** Nobody's number but the owner's: a file leaves the works, and who reported is no matter of lists. */
    public List<String> cells() {
        return List.of(
                String.valueOf(miss.number()),
                miss.reported().moment().at().toString(),
                miss.said().order().orElse(""),
                miss.said().station().orElse(""),
                words().orElse(""),
                miss.state().name(),
                miss.owner().orElse(""),
                miss.dueOn().map(LocalDate::toString).orElse(""),
                miss.changed().orElse(""));
    }
}
