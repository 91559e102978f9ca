package wainbook.line.forecast.sequence;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.engineering.flow.sequence.Comparison;
import wainbook.engineering.flow.sequence.Found;
import wainbook.engineering.flow.sequence.Found.Ending;
import wainbook.engineering.flow.sequence.Found.Verdict;
import wainbook.engineering.flow.sequence.InFront;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;

/**
 * What a search for a better order came to, as it is kept.
 *
 * @param at when the line stood as it was searched for
 * @param entries about vehicles that were on record then
 * @param possible orders; a great many are told roughly
 * @param searched draws of each order tried
 * @param compared fresh draws, of which all figures below are
 * @param seed of the fresh draws
 * @param saved late working minutes, with the 95 % interval
 * @param keptBefore of {@code promised} days, on average
 * @param likelier days, of all vehicles, that are kept with better odds than in today's order, and {@code lessLikely}
 * @param places those in front of the line, in the order found
 */
public record Proposal(
        Instant at,
        long entries,
        Verdict verdict,
        Ending ending,
        int tried,
        double possible,
        int searched,
        int compared,
        long seed,
        double lateBefore,
        double lateAfter,
        PairedDifference saved,
        int promised,
        double keptBefore,
        PairedDifference moreKept,
        int likelier,
        int lessLikely,
        List<Place> places) {

    /** Of the draws to search with, which are not those of the forecast. */
    static final long SEED = LineForecast.SEED + 1;

    public Proposal {
        places = List.copyOf(places);
    }

    /**
     * One in front of the line.
     *
     * @param here whether its donor is in the works
     * @param today its place in today's order, from 1
     * @param oddsBefore of its day in today's order, and {@code oddsAfter} in the one found
     * @param likelier with the 95 % interval
     * @param medianBefore of its finish; empty where that lies beyond the calendar
     * @param laterMinutes on average, in working minutes of the last stage; negative if it finishes earlier
     */
    public record Place(
            String order,
            String kind,
            LocalDate promisedOn,
            boolean here,
            int today,
            double oddsBefore,
            double oddsAfter,
            PairedDifference likelier,
            Optional<Instant> medianBefore,
            Optional<Instant> medianAfter,
            OptionalDouble laterMinutes) {

        public boolean gains() {
            return likelier.low() > 0;
        }

        public boolean loses() {
            return likelier.high() < 0;
        }
    }

    /** Another order than today's is proposed. */
    public boolean better() {
        return verdict == Verdict.BETTER;
    }

    /** As today's order was then. */
    public List<String> today() {
        return byToday().stream().map(Place::order).toList();
    }

    /** What is to be shown: the order found if it is better, else today's. */
    public List<Place> shown() {
        return better() ? places : byToday();
    }

    private List<Place> byToday() {
        return places.stream().sorted(Comparator.comparing(Place::today)).toList();
    }

    public List<String> order() {
        return places.stream().map(Place::order).toList();
    }

    /** Vehicles in front of the line by whether their donors are here: those that are come first, as the rule of entry has it. */
    static InFront inFront(TheLineNow line) {
        List<OnHand> waiting = line.waiting();
        return new InFront(line.line(), List.of(orders(waiting, true), orders(waiting, false)));
    }

    /** Whether there is more than one order. */
    public static boolean mayChange(TheLineNow line) {
        return orders(line.waiting(), true).size() > 1
                || orders(line.waiting(), false).size() > 1;
    }

    private static List<String> orders(List<OnHand> waiting, boolean here) {
        return waiting.stream()
                .filter(one -> here(one) == here)
                .map(OnHand::order)
                .toList();
    }

    public static boolean here(OnHand waiting) {
        return waiting.doing() != OnHand.Doing.ORDERED;
    }

    static Proposal of(TheLineNow line, long entries, Found found) {
        Comparison compared = found.comparison();
        return new Proposal(
                line.calendar().now(),
                entries,
                found.verdict(),
                found.ending(),
                found.tried(),
                found.possible(),
                found.draws(),
                compared.draws(),
                compared.seed(),
                compared.lateBefore(),
                compared.lateAfter(),
                compared.saved(),
                compared.vehicles().size(),
                compared.keptBefore(),
                compared.moreKept(),
                (int) compared.vehicles().stream()
                        .filter(Comparison.Change::gains)
                        .count(),
                (int) compared.vehicles().stream()
                        .filter(Comparison.Change::loses)
                        .count(),
                found.order().stream().map(order -> place(line, found, order)).toList());
    }

    private static Place place(TheLineNow line, Found found, String order) {
        OnHand vehicle = line.vehicle(order).orElseThrow();
        Comparison.Change change = found.comparison().vehicles().stream()
                .filter(one -> one.vehicle().equals(order))
                .findFirst()
                .orElseThrow();
        Calendar calendar = line.calendar();
        return new Place(
                order,
                vehicle.kind(),
                vehicle.promisedOn(),
                here(vehicle),
                found.today().indexOf(order) + 1,
                change.oddsBefore(),
                change.oddsAfter(),
                change.likelier(),
                calendar.notAfter(change.medianBefore()),
                calendar.notAfter(change.medianAfter()),
                change.laterMinutes());
    }
}
