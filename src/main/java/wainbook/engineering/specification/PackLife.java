package wainbook.engineering.specification;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import wainbook.engineering.energy.store.Ageing;

/**
 * How long a number of packs does a duty: its state of health at the end of each year, and until when the worst day is met.
 *
 * @param daysAYear on which the usual day’s work is done
 */
public record PackLife(PackTable table, Ageing ageing, double daysAYear) {

    /** Years that are looked at; who asks for more is told that it is more. */
    public static final int MOST_YEARS = 30;

    private static final double ROUNDING = 1e-9;

    /**
     * The end of a year; 0 is new.
     *
     * @param usableKwh on the coldest day
     * @param met whether the worst day is met with the odds that are wanted
     */
    public record Year(int year, double stateOfHealth, double usableKwh, double odds, boolean met) {}

    /**
     * @param cyclesAYear full-cycle equivalents: energy out of the packs in a year over their nominal energy
     * @param neededHealth at which the worst day is just met with the odds that are wanted; above 1 where new packs do not meet it
     * @param lastMet the last year at whose end the worst day is met, 0 if only when new, at most {@link #MOST_YEARS}; empty if never
     * @param endsIn the year in which the end of life is reached; empty if later than {@link #MOST_YEARS}
     * @param years until a year after both, at most {@link #MOST_YEARS}
     */
    public record Life(
            int packs,
            double cyclesAYear,
            double lostAYear,
            double neededHealth,
            OptionalInt lastMet,
            OptionalInt endsIn,
            List<Year> years) {

        public Life {
            years = List.copyOf(years);
        }

        /** Whether the worst day is met to the end of this year. */
        public boolean lasts(int years) {
            return lastMet.isPresent() && lastMet.getAsInt() >= Math.min(years, MOST_YEARS);
        }
    }

    public Life of(PackRow row) {
        double nominalKwh = row.packs() * table.pack().nominalKwh();
        double cyclesAYear = row.usualKwh() * daysAYear / nominalKwh;
        double newKwh =
                table.pack().usableNewKwh(row.packs()) * table.day().coldest().packShare();
        double neededHealth = table.need().factor(table.odds()) * row.worstKwh() / newKwh;
        OptionalInt lastMet = lastMet(neededHealth, cyclesAYear);
        OptionalInt endsIn = endsIn(cyclesAYear);
        int last = Math.min(
                MOST_YEARS, 1 + Math.max(lastMet.orElse(0), endsIn.isPresent() ? endsIn.getAsInt() : MOST_YEARS));
        return new Life(
                row.packs(),
                cyclesAYear,
                ageing.lostInAYear(cyclesAYear),
                neededHealth,
                lastMet,
                endsIn,
                IntStream.rangeClosed(0, last)
                        .mapToObj(year -> year(year, cyclesAYear, newKwh, row.worstKwh(), lastMet))
                        .toList());
    }

    private Year year(int year, double cyclesAYear, double newKwh, double worstKwh, OptionalInt lastMet) {
        double health = ageing.stateOfHealth(cyclesAYear, year);
        return new Year(
                year,
                health,
                health * newKwh,
                table.need().met(health * newKwh, worstKwh),
                lastMet.isPresent() && year <= lastMet.getAsInt());
    }

    private OptionalInt lastMet(double neededHealth, double cyclesAYear) {
        double years = ageing.yearsTo(neededHealth, cyclesAYear) + ROUNDING;
        return neededHealth > 1 + ROUNDING ? OptionalInt.empty() : OptionalInt.of((int) Math.min(MOST_YEARS, years));
    }

    private OptionalInt endsIn(double cyclesAYear) {
        double years = Math.ceil(ageing.yearsTo(table.pack().endOfLife(), cyclesAYear) - ROUNDING);
        return years <= MOST_YEARS ? OptionalInt.of((int) years) : OptionalInt.empty();
    }
}
