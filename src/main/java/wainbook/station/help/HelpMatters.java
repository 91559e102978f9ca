package wainbook.station.help;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Station;

/** Calls for help that are not settled: whoever was called must act, and once somebody comes, that person. */
@ApplicationScoped
class HelpMatters implements Matters {

    private final Releases releases;

    HelpMatters(Releases releases) {
        this.releases = releases;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return OpenHelpCall.oldestFirst().stream().map(this::matter).toList();
    }

    private OpenMatter matter(OpenHelpCall row) {
        String called = HelpCall.word(row.askedFor);
        String key = row.askedFor.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new OpenMatter(
                Sort.HELP_CALL,
                row.workOrder,
                Words.of("station.helpNumber", row.callNumber),
                Optional.ofNullable(row.place)
                        .map(place ->
                                releases.station(place).map(Station::title).orElse(place)),
                Objects.toString(row.words, Words.of("station.helpFrom", called)),
                row.since,
                List.of(Optional.ofNullable(row.answeredBy).map(Owner::person).orElse(new Owner(key, called))),
                Due.open(),
                row.workStands ? Words.of("station.barsWork") : "",
                row.path());
    }
}
