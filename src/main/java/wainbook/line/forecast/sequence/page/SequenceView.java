package wainbook.line.forecast.sequence.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.engineering.flow.sequence.Comparison;
import wainbook.engineering.flow.sequence.Found.Verdict;
import wainbook.engineering.flow.sequence.Progress;
import wainbook.line.forecast.sequence.EntrySearch;
import wainbook.line.forecast.sequence.EntrySearch.Standing;
import wainbook.line.forecast.sequence.Proposal;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.SetOrder;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.PersonInWords;

/**
 * The order of entry as its page shows it.
 *
 * @param newest search, if there ever was one
 * @param proposal of the last search that came to something, {@code proposedBy}
 * @param entriesSince about vehicles, after the proposal
 * @param lastSet the order of entry that was set or taken back last
 * @param mayAsk whether who looks may search
 * @param maySet whether who looks may set the order
 */
public record SequenceView(
        TheLineNow line,
        Optional<EntrySearch> newest,
        Optional<Progress> progress,
        Optional<UUID> proposedBy,
        Optional<Proposal> proposal,
        long entriesSince,
        Optional<SetOrder> lastSet,
        Filled filled,
        boolean mayAsk,
        boolean maySet,
        Formats formats) {

    private static final double COUNTED = 1e6;

    public String title() {
        if (running()) {
            return Words.of("line.sequenceTitleRuns");
        }
        if (!any()) {
            return Words.of("line.sequenceTitleNone");
        }
        return proposal.filter(found -> !outOfDate())
                .map(found -> found.better() && !followed()
                        ? Words.of(
                                "line.sequenceTitleBetter",
                                Math.round(found.saved().mean()))
                        : Words.of(followed() ? "line.sequenceTitleFollowed" : "line.sequenceTitleStands"))
                .orElseGet(() -> Words.of("line.sequenceTitle"));
    }

    public boolean any() {
        return !line.waiting().isEmpty();
    }

    /** Whether there is more than one order. */
    public boolean mayChange() {
        return Proposal.mayChange(line);
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
        return newest.filter(row -> row.standing == standing).isPresent();
    }

    public UUID actId() {
        return UUID.randomUUID();
    }

    /** The order that is set, if one is. */
    public Optional<SetOrder> set() {
        return lastSet.filter(order -> !order.orders().isEmpty());
    }

    public long replaces() {
        return lastSet.map(SetOrder::entry).orElse(0L);
    }

    public String setText() {
        SetOrder set = set().orElseThrow();
        return Words.of(
                "line.entryOrderSet",
                PersonInWords.name(set.by()),
                formats.day(set.at()),
                formats.clock(set.at()),
                String.join(", ", set.orders()));
    }

    public UUID searchId() {
        return newest.orElseThrow().id;
    }

    public String progressText() {
        return progress.map(now -> Words.of(
                        "line.sequencePhase." + now.phase().name(),
                        now.orders(),
                        now.most(),
                        Math.round(now.lateToday()),
                        Math.round(now.leastLate())))
                .orElseGet(() -> Words.of("line.sequenceBegins"));
    }

    public boolean better() {
        return proposal.filter(Proposal::better).isPresent();
    }

    /** What the search came to, in a sentence. */
    public String result() {
        Proposal found = proposal.orElseThrow();
        PairedDifference saved = found.saved();
        return switch (found.verdict()) {
            case BETTER ->
                Words.of(
                        "line.sequenceBetter",
                        Math.round(saved.mean()),
                        Math.round(saved.low()),
                        Math.round(saved.high()),
                        Math.round(found.lateBefore()),
                        Math.round(found.lateAfter()));
            case NOT_SHOWN ->
                Words.of("line.sequenceNotShown", tenths(saved.mean()), tenths(saved.low()), tenths(saved.high()));
            case TOO_LITTLE ->
                Words.of(
                        "line.sequenceTooLittle",
                        tenths(saved.mean()),
                        tenths(saved.low()),
                        tenths(saved.high()),
                        Math.round(Comparison.LEAST_MINUTES));
            case NONE_BETTER -> Words.of("line.sequenceNoneBetter");
            case NOBODY_LATE -> Words.of("line.sequenceNobodyLate", found.searched());
        };
    }

    public String kept() {
        Proposal found = proposal.orElseThrow();
        if (found.better() && found.likelier() + found.lessLikely() == 0) {
            return Words.of("line.sequenceKeptAlike", found.promised(), tenths(found.keptBefore()));
        }
        return found.better()
                ? Words.of(
                        "line.sequenceKept",
                        found.promised(),
                        tenths(found.keptBefore()),
                        hundredths(found.moreKept().mean()),
                        hundredths(found.moreKept().low()),
                        hundredths(found.moreKept().high()),
                        found.likelier(),
                        found.lessLikely())
                : Words.of("line.sequenceKeptToday", found.promised(), tenths(found.keptBefore()));
    }

    /** Others wait now than those it was made for, or in another order that is not the proposed one either. */
    public boolean outOfDate() {
        return proposal.filter(found -> !found.today().equals(now())).isPresent() && !followed();
    }

    /** They come in the proposed order already. */
    public boolean followed() {
        return proposal.filter(found -> found.better() && found.order().equals(now()))
                .isPresent();
    }

    private List<String> now() {
        return line.waiting().stream().map(OnHand::order).toList();
    }

    public String oldText() {
        Instant at = proposal.orElseThrow().at();
        return Words.of("line.sequenceOld", formats.day(at), formats.clock(at), entriesSince);
    }

    public String made() {
        Instant at = proposal.orElseThrow().at();
        String made = Words.of("line.sequenceMade", formats.day(at), formats.clock(at));
        return entriesSince == 0 ? made : made + " " + Words.of("line.sequenceSince", entriesSince);
    }

    public String tableTitle() {
        return Words.of(better() ? "line.sequenceTable" : "line.sequenceTableToday");
    }

    public String oddsTitle() {
        return Words.of(better() ? "line.sequenceOdds" : "line.forecastOdds");
    }

    public String finishTitle() {
        return Words.of(better() ? "line.sequenceFinish" : "line.forecastMedian");
    }

    public List<SequenceTable.Row> rows() {
        return table().rows();
    }

    SequenceTable table() {
        return new SequenceTable(line, proposal, formats);
    }

    /** How the proposal was found, a sentence or two each. */
    public List<String> how() {
        return proposal.filter(found -> found.verdict() != Verdict.NOBODY_LATE).stream()
                .flatMap(found -> Stream.of(
                                Stream.of(Words.of(
                                        "line.sequenceEnding." + found.ending().name(),
                                        count(found.tried()),
                                        count(found.possible()),
                                        found.searched())),
                                found.verdict() == Verdict.NONE_BETTER
                                        ? Stream.<String>empty()
                                        : Stream.of(Words.of("line.sequenceChoice")),
                                Stream.of(Words.of("line.sequenceFresh", found.compared(), found.seed())))
                        .flatMap(some -> some))
                .toList();
    }

    private static String count(double orders) {
        return orders > COUNTED
                ? Words.of("line.sequenceManyOrders")
                : String.format(Words.LOCALE, "%,d", Math.round(orders));
    }

    private static String tenths(double value) {
        return String.format(Locale.ROOT, "%.1f", value + 0.0);
    }

    private static String hundredths(double value) {
        return String.format(Locale.ROOT, "%.2f", value + 0.0);
    }
}
