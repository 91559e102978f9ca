package wainbook.line.forecast.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wainbook.engineering.statistics.Share;
import wainbook.line.forecast.kept.BackTests;
import wainbook.line.forecast.score.Card;
import wainbook.line.forecast.score.Cards;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * How good earlier forecasts were, as the page shows it. What was kept and what was worked out afterwards are never mixed.
 *
 * @param keepAt when a forecast is kept on a working day
 * @param afterwards empty as long as no back-test has ended
 */
public record ScoresView(
        Cards kept,
        Optional<BackTests.Progress> progress,
        Optional<Cards> afterwards,
        Formats formats,
        boolean mayTest,
        Optional<String> keepAt) {

    private static final double MOST = 0.8;
    private static final double NEARLY_ALL = 0.95;

    public String title() {
        return kept.cards().stream()
                .filter(card -> card.within80().isPresent())
                .findFirst()
                .map(card -> card.within80().orElseThrow())
                .map(share -> Words.of("line.scoresTitleKept", share.events(), share.pieces()))
                .orElseGet(() -> Words.of("line.scoresTitle"));
    }

    public String keptAt() {
        return keepAt.orElse("–");
    }

    public boolean anyKept() {
        return any(kept);
    }

    public boolean any(Cards cards) {
        return cards.cards().stream().anyMatch(card -> card.counted() + card.open() + card.onPlan() > 0);
    }

    public boolean running() {
        return progress.filter(one -> !one.ended()).isPresent();
    }

    public boolean failed() {
        return progress.filter(BackTests.Progress::failed).isPresent();
    }

    public String progressText() {
        return progress.map(one -> Words.of("line.scoresProgress", one.done(), one.days()))
                .orElse("");
    }

    public String madeAt() {
        return progress.map(one -> Words.of("line.scoresMade", formats.moment(one.begun()), one.days()))
                .orElse("");
    }

    public String horizon(Card card) {
        return Words.of("line.scoresAhead", card.days());
    }

    public String eighty(Card card) {
        return coverage(card.within80(), MOST, "line.scoresEighty");
    }

    public String ninetyFive(Card card) {
        return coverage(card.within95(), NEARLY_ALL, "line.scoresNinetyFive");
    }

    private static String coverage(Optional<Share> share, double said, String key) {
        return share.map(found -> {
                    Share.Interval interval = found.exact(Card.CONFIDENCE);
                    boolean off = said < interval.low() || said > interval.high();
                    return Words.of(
                            key,
                            found.events(),
                            found.pieces(),
                            percent(interval.low()),
                            percent(interval.high()),
                            Words.of(
                                    off
                                            ? (said > interval.high() ? "line.scoresNarrow" : "line.scoresWide")
                                            : "line.scoresRight"));
                })
                .orElseGet(() -> Words.of("line.scoresNone"));
    }

    public String loss(Card card) {
        return card.loss()
                .map(loss -> Words.of(
                        loss.byTakt().isPresent() ? "line.scoresLoss" : "line.scoresLossNoTakt",
                        one(loss.forecast()),
                        one(loss.byStages()),
                        loss.byTakt().isPresent() ? one(loss.byTakt().getAsDouble()) : "",
                        Words.of(loss.beatsAll() ? "line.scoresBeats" : "line.scoresBeaten")))
                .orElse("–");
    }

    public String late(Card card) {
        return card.late().isPresent()
                ? Words.of(
                        card.late().getAsDouble() >= 0 ? "line.scoresLater" : "line.scoresEarlier",
                        one(Math.abs(card.late().getAsDouble())))
                : "–";
    }

    public String left(Card card) {
        return Words.of("line.scoresLeft", card.unfinished(), card.open(), card.onPlan());
    }

    public String brier(Card card) {
        return card.brier()
                .map(brier -> Words.of("line.scoresBrier", three(brier.odds()), three(brier.shareAlone())))
                .orElse("–");
    }

    public String places(Card card) {
        String counts = card.places().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return card.pit()
                .map(pit -> Words.of("line.scoresPit", counts, one(pit.chiSquare()), three(pit.p())))
                .orElse(counts);
    }

    List<List<String>> cells() {
        List<List<String>> rows = new ArrayList<>();
        kept.cards().forEach(card -> rows.add(cells("kept", card)));
        afterwards.ifPresent(cards -> cards.cards().forEach(card -> rows.add(cells("worked out afterwards", card))));
        return rows;
    }

    private static List<String> cells(String how, Card card) {
        return List.of(
                how,
                String.valueOf(card.days()),
                String.valueOf(card.counted()),
                String.valueOf(card.unfinished()),
                String.valueOf(card.open()),
                String.valueOf(card.onPlan()),
                card.within80().map(share -> String.valueOf(share.events())).orElse(""),
                card.within95().map(share -> String.valueOf(share.events())).orElse(""),
                card.loss().map(loss -> three(loss.forecast())).orElse(""),
                card.loss().map(loss -> three(loss.byStages())).orElse(""),
                card.loss()
                        .map(Card.Loss::byTakt)
                        .filter(OptionalDouble::isPresent)
                        .map(takt -> three(takt.getAsDouble()))
                        .orElse(""),
                card.brier().map(brier -> three(brier.odds())).orElse(""));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String three(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
