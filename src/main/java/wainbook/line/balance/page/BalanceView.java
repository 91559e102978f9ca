package wainbook.line.balance.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.engineering.balance.Progress;
import wainbook.line.balance.BalanceSearch;
import wainbook.line.balance.BalanceSearch.Standing;
import wainbook.line.balance.Proposal;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The balance as its page shows it.
 *
 * @param search the newest, if there ever was one
 * @param comparing whether the search looks by now what the rules cost
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
        boolean comparing,
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
        return title(content, stage);
    }

    static String title(Content content, String stage) {
        return content.stages().stream()
                .filter(place -> place.stage().equals(stage))
                .findFirst()
                .map(place -> place.number() + " " + place.title())
                .orElse(stage);
    }

    static String minutes(double minutes) {
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
        return Stream.of("overrunPercent", "itemsThatStay", "seconds")
                .anyMatch(field -> filled.form().fault(field).isPresent());
    }

    /** The form's part on rules. */
    public RuleRows rules() {
        return new RuleRows(content, filled);
    }

    /** The form's part on persons. */
    public Crews crews() {
        return new Crews(content, filled);
    }

    /** What was asked of the search that is shown. */
    public AskedInWords asked() {
        return new AskedInWords(content, question.orElseThrow());
    }

    /** What the search came to, in words. */
    public Result result() {
        return new Result(content, question.orElseThrow(), proposal.orElseThrow());
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

    public List<Option> times() {
        return Stream.of(Question.Times.values())
                .map(times -> new Option(times.name(), Words.of("line.balanceTimes." + times.name())))
                .toList();
    }

    public boolean stays(String stage) {
        return staying.contains(stage);
    }

    /** How far the running search is, in words. */
    public String progressText() {
        return comparing
                ? Words.of("line.balanceComparing", figure(Math.floor(seconds)))
                : progress.map(this::told).orElseGet(() -> Words.of("line.balanceBegins"));
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

    public LoadBars bars() {
        Content.Place heaviest = content.stages().stream()
                .max((one, other) -> Double.compare(content.load(one.stage()), content.load(other.stage())))
                .orElseThrow();
        return new LoadBars(
                Words.of("line.balanceBars"),
                Words.of("line.balanceBarsText", heaviest.title(), load(heaviest)),
                content.taktMinutes().map(Integer::doubleValue),
                content.taktMinutes().map(takt -> Words.of("line.takt", takt)).orElse(""),
                content.stages().stream().map(this::row).toList());
    }

    private LoadBars.Row row(Content.Place place) {
        return new LoadBars.Row(
                title(place.stage()),
                content.load(place.stage()),
                Words.of("line.balanceMinutes", load(place)),
                Optional.empty(),
                "");
    }

    static String figure(double value) {
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
