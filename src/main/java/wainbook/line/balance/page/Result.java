package wainbook.line.balance.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.line.balance.Proposal;
import wainbook.line.balance.Proposal.Without;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Pace;
import wainbook.page.Words;

/** What a search came to, in words and bars. */
public record Result(Content content, Question question, Proposal found) {

    /** In one sentence. */
    public String sentence() {
        if (found.cycleMinutes().isEmpty()) {
            return Words.of(found.proven() ? "line.balanceNone" : "line.balanceNoneYet");
        }
        return Words.of(
                sought() + (found.proven() ? ".proved" : ".open"),
                BalanceView.figure(found.best()),
                question.taktMinutes().map(String::valueOf).orElse(""),
                BalanceView.figure(found.lowerBound()),
                BalanceView.figure(100 * found.gap()));
    }

    private String sought() {
        return question.taktMinutes().isPresent() ? "line.balanceStations" : "line.balanceCycle";
    }

    public String chosen() {
        return Words.of("line.balanceChosen." + (question.leastChange() ? "least" : "smoothest")
                + (found.chosen() ? ".proved" : ".open"));
    }

    /** What the rules on items cost, where it was looked at; said as a cost only where both are proved. */
    public Optional<String> cost() {
        return found.withoutRules().map(this::cost);
    }

    private String cost(Without without) {
        String key = sought() + "Without.";
        if (without.best().isEmpty()) {
            return Words.of(key + "none", BalanceView.figure(without.lowerBound()));
        }
        String best = BalanceView.figure(without.best().get());
        if (found.cycleMinutes().isEmpty() || !found.proven() || !without.proven()) {
            return Words.of(key + "open", best, BalanceView.figure(without.lowerBound()));
        }
        double more = found.best() - without.best().get();
        return more > 0 ? Words.of(key + "cost", best, BalanceView.figure(more)) : Words.of(key + "free");
    }

    public boolean severalPersons() {
        return content.stages().stream().anyMatch(place -> question.persons(place.stage()) > 1);
    }

    public int persons(String stage) {
        return question.persons(stage);
    }

    public String title(String stage) {
        return BalanceView.title(content, stage);
    }

    public String minutes(double minutes) {
        return BalanceView.minutes(minutes);
    }

    /**
     * The kinds of vehicle that go alike at a stage.
     *
     * @param all whether it is every kind that has work there
     * @param ground in words, with the records it rests on
     */
    public record PaceRow(String stage, boolean all, List<String> kinds, String factor, String ground) {}

    public List<PaceRow> paces() {
        return found.paces().stream()
                .collect(Collectors.groupingBy(
                        pace -> List.of(pace.stage(), pace.ground(), pace.factor(), pace.records()),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .stream()
                .map(this::row)
                .toList();
    }

    private PaceRow row(List<Pace> alike) {
        Pace one = alike.get(0);
        long there = found.paces().stream()
                .filter(pace -> pace.stage().equals(one.stage()))
                .count();
        return new PaceRow(
                title(one.stage()),
                alike.size() == there && there > 1,
                alike.stream().map(Pace::kind).toList(),
                String.format(Locale.ROOT, "%.2f", one.factor()),
                Words.of("line.balanceGround." + one.ground().name(), one.records()));
    }

    /** Stages today and then. */
    public LoadBars bars() {
        Optional<Integer> takt = question.taktMinutes().or(content::taktMinutes);
        return new LoadBars(
                Words.of("line.balanceLoads"),
                Words.of("line.balanceLoadsText"),
                takt.map(Integer::doubleValue),
                takt.map(minutes -> Words.of("line.takt", minutes)).orElse(""),
                found.loads().stream().map(this::row).toList());
    }

    private LoadBars.Row row(Proposal.Load load) {
        return new LoadBars.Row(
                title(load.stage()),
                load.beforeMinutes(),
                Words.of("line.balanceMinutes", minutes(load.beforeMinutes())),
                Optional.of(load.afterMinutes()),
                Words.of("line.balanceThenMinutes", minutes(load.afterMinutes())));
    }
}
