package wainbook.line.balance.page;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.engineering.balance.Progress;
import wainbook.line.balance.BalanceSearch;
import wainbook.line.balance.BalanceSearch.Standing;
import wainbook.line.balance.Content;
import wainbook.line.balance.Proposal;
import wainbook.line.balance.Question;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The balance as its page shows it.
 *
 * @param search the newest, if there ever was one
 * @param mayAsk whether who looks may search
 * @param mayDraft whether who looks may make drafts of what was found
 */
public record BalanceView(
        Content content,
        Optional<BalanceSearch> search,
        Optional<Question> question,
        Optional<Proposal> proposal,
        Optional<Progress> progress,
        double seconds,
        Filled filled,
        List<String> staying,
        boolean mayAsk,
        boolean mayDraft) {

    public boolean any() {
        return !content.items().isEmpty() && !content.kinds().isEmpty();
    }

    public String heading() {
        return any() && content.taktMinutes().isPresent()
                ? Words.of(
                        "line.balanceTitleOver",
                        content.stages().stream().filter(this::over).count(),
                        content.stages().size())
                : Words.of("line.balanceTitle");
    }

    public boolean running() {
        return standing(Standing.RUNNING);
    }

    public boolean interrupted() {
        return standing(Standing.INTERRUPTED);
    }

    public boolean cancelled() {
        return standing(Standing.CANCELLED);
    }

    public boolean failed() {
        return standing(Standing.FAILED);
    }

    private boolean standing(Standing standing) {
        return search.filter(row -> row.standing == standing).isPresent();
    }

    public UUID actId() {
        return UUID.randomUUID();
    }

    public UUID searchId() {
        return search.orElseThrow().id;
    }

    public String title(String stage) {
        return content.stages().stream()
                .filter(place -> place.stage().equals(stage))
                .findFirst()
                .map(place -> place.number() + " " + place.title())
                .orElse(stage);
    }

    public String minutes(double minutes) {
        return String.format(Locale.ROOT, "%.1f", minutes);
    }

    public String load(Content.Place place) {
        return minutes(content.load(place.stage()));
    }

    public String load(Content.Place place, Content.KindShare share) {
        return minutes(content.load(place.stage(), share.kind()));
    }

    public boolean over(Content.Place place) {
        return content.taktMinutes()
                .filter(takt -> content.load(place.stage()) > takt)
                .isPresent();
    }

    /** Whether what is seldom asked has a fault, and has to be seen. */
    public boolean limitsAtFault() {
        return Stream.of("overrunPercent", "items", "seconds")
                .anyMatch(field -> filled.form().fault(field).isPresent());
    }

    public List<Option> aims() {
        return Stream.of(AskedFor.STATIONS, AskedFor.TAKT)
                .map(aim -> new Option(aim, Words.of("line.balanceAim." + aim)))
                .toList();
    }

    public List<Option> thens() {
        return Stream.of("least", "smoothest")
                .map(then -> new Option(then, Words.of("line.balanceThen." + then)))
                .toList();
    }

    public boolean stays(String stage) {
        return staying.contains(stage);
    }

    /** How far the running search is, in words. */
    public String progressText() {
        return progress.map(this::told).orElseGet(() -> Words.of("line.balanceBegins"));
    }

    private String told(Progress now) {
        String phase = Words.of("line.balancePhase." + now.phase().name());
        String since = figure(Math.floor(seconds));
        if (now.best().isEmpty()) {
            return Words.of("line.balanceProgressNone", phase, figure(now.bound()), since);
        }
        double best = now.best().getAsDouble();
        String gap = figure(best > 0 ? 100 * (best - now.bound()) / best : 0);
        return Words.of("line.balanceProgress", phase, figure(best), figure(now.bound()), gap, since);
    }

    /** What the search came to, in one sentence. */
    public String result() {
        Proposal found = proposal.orElseThrow();
        boolean stations = question.orElseThrow().taktMinutes().isPresent();
        if (found.cycleMinutes().isEmpty()) {
            return Words.of(found.proven() ? "line.balanceNone" : "line.balanceNoneYet");
        }
        String key = (stations ? "line.balanceStations." : "line.balanceCycle.") + (found.proven() ? "proved" : "open");
        return Words.of(
                key,
                figure(found.best()),
                question.orElseThrow().taktMinutes().map(String::valueOf).orElse(""),
                figure(found.lowerBound()),
                figure(100 * found.gap()));
    }

    public String chosen() {
        String then = question.orElseThrow().leastChange() ? "least" : "smoothest";
        return Words.of("line.balanceChosen." + then + (proposal.orElseThrow().chosen() ? ".proved" : ".open"));
    }

    public LoadBars bars() {
        Map<String, Proposal.Load> then = proposal.map(Proposal::loads).orElse(List.of()).stream()
                .collect(Collectors.toMap(Proposal.Load::stage, Function.identity()));
        Content.Place heaviest = content.stages().stream()
                .max((one, other) -> Double.compare(content.load(one.stage()), content.load(other.stage())))
                .orElseThrow();
        return new LoadBars(
                Words.of("line.balanceBars"),
                Words.of("line.balanceBarsText", heaviest.title(), load(heaviest)),
                content.taktMinutes().map(Integer::doubleValue),
                content.taktMinutes().map(takt -> Words.of("line.takt", takt)).orElse(""),
                content.stages().stream()
                        .map(place -> row(place, Optional.ofNullable(then.get(place.stage()))))
                        .toList());
    }

    private LoadBars.Row row(Content.Place place, Optional<Proposal.Load> then) {
        return new LoadBars.Row(
                place.number() + " " + place.title(),
                content.load(place.stage()),
                Words.of("line.balanceMinutes", load(place)),
                then.map(Proposal.Load::afterMinutes),
                then.map(after -> Words.of("line.balanceThenMinutes", minutes(after.afterMinutes())))
                        .orElse(""));
    }

    private static String figure(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.2f", value);
    }

    List<List<String>> cells() {
        return content.stages().stream()
                .map(place -> Stream.concat(
                                Stream.of(
                                        String.valueOf(place.number()),
                                        place.title(),
                                        String.valueOf(place.stations()),
                                        load(place)),
                                content.kinds().stream().map(share -> load(place, share)))
                        .toList())
                .toList();
    }

    List<String> header() {
        return Stream.concat(
                        Stream.of(Words.of("line.balanceHeader").split(";")),
                        content.kinds().stream().map(Content.KindShare::kind))
                .toList();
    }
}
