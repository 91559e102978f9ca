package wainbook.order.specification.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.IntStream;
import wainbook.act.Reason;
import wainbook.engineering.energy.store.Consumption;
import wainbook.engineering.specification.PackLife;
import wainbook.engineering.specification.RuledOut;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.weighing.Prediction;
import wainbook.page.Words;

/**
 * A number of packs as the page shows it.
 *
 * @param reasons why it will not do
 * @param life empty where the ageing of its packs was not stated
 * @param form its own id, so that choosing twice writes once
 * @param chosen whether it is what was chosen last
 * @param steps how it was worked out
 */
public record RowView(
        SpecificationTable.Row row,
        Prediction built,
        List<Double> limitsKg,
        List<Reason> reasons,
        Optional<PackLife.Life> life,
        UUID form,
        boolean chosen,
        List<StepLine> steps) {

    public RowView {
        limitsKg = List.copyOf(limitsKg);
        reasons = List.copyOf(reasons);
        steps = List.copyOf(steps);
    }

    /** One axle: empty, laden, what it may carry. */
    public record AxleCell(int axle, String empty, String laden, String limit, boolean over) {}

    public int packs() {
        return row.packs().packs();
    }

    /** The number of packs that is looked at first: what was chosen, else the fewest that will do, else the most. */
    static int shown(List<RowView> rows) {
        return rows.stream()
                .filter(RowView::chosen)
                .findFirst()
                .or(() -> rows.stream().filter(RowView::feasible).findFirst())
                .map(RowView::packs)
                .orElse(rows.size());
    }

    public boolean feasible() {
        return row.feasible();
    }

    /** Only energy is short, and a charge at midday would mend it. */
    public boolean withMidday() {
        return !feasible() && row.ruledOut().stream().allMatch(RuledOut.Energy.class::isInstance);
    }

    public String midday() {
        return Words.of("order.withMidday", one(row.packs().middayKwh()));
    }

    /** Each in its first sentence; what to do stands where somebody would choose it. */
    public List<String> briefly() {
        return reasons.stream()
                .map(reason -> Words.of(reason.key(), reason.arguments().toArray()))
                .map(text -> text.substring(0, text.indexOf(". ") + 1))
                .toList();
    }

    public String rangeNew() {
        return whole(row.packs().rangeNewKm());
    }

    public String rangeAtEnd() {
        return whole(row.packs().rangeAtEndKm());
    }

    public String rangeColdNew() {
        return whole(row.packs().rangeColdNewKm());
    }

    public String rangeColdAtEnd() {
        return whole(row.packs().rangeColdAtEndKm());
    }

    public String milesNew() {
        return whole(Consumption.miles(row.packs().rangeNewKm()));
    }

    public String oddsNew() {
        return percent(row.packs().oddsNew());
    }

    public String oddsAtEnd() {
        return percent(row.packs().oddsAtEnd());
    }

    public String payload() {
        return whole(row.packs().payload().kg());
    }

    public String boundBy() {
        return Words.of("order.bound." + row.packs().payload().binding().name());
    }

    public String kwhPerKm() {
        return String.format(Locale.ROOT, "%.2f", row.packs().kwhPerKm());
    }

    public List<AxleCell> axles() {
        return IntStream.range(0, row.emptyKg().size())
                .mapToObj(i -> new AxleCell(
                        i + 1,
                        whole(row.emptyKg().get(i)),
                        whole(row.ladenKg().get(i)),
                        whole(limitsKg.get(i)),
                        Math.round(row.ladenKg().get(i)) > Math.round(limitsKg.get(i))))
                .toList();
    }

    /** The heaviest that the front group becomes while it is unloaded from the rear. */
    public String worstFront() {
        return whole(row.worstFrontKg());
    }

    public String lifted() {
        var loads = new ArrayList<String>();
        row.liftedKg().forEach(load -> loads.add(whole(load)));
        return String.join(" / ", loads);
    }

    public String total() {
        return whole(row.packs().laden().totalKg());
    }

    public String steering() {
        return percent(row.packs().laden().steeringShare());
    }

    public String start() {
        return grade(row.start());
    }

    public String climb() {
        return grade(row.climb());
    }

    public String charge() {
        return Double.isFinite(row.chargeHours()) ? one(row.chargeHours()) : Words.of("order.never");
    }

    private static String grade(SpecificationTable.Climb climb) {
        OptionalDouble grade = climb.grade();
        if (grade.isEmpty()) {
            return Words.of("order.anySlope");
        }
        return one(100 * grade.getAsDouble()) + " %" + (climb.byGrip() ? " " + Words.of("order.byGrip") : "");
    }

    /** Odds near 0 and 1 keep a decimal, so that 100 % is never claimed. */
    static String percent(double share) {
        double percent = 100 * share;
        if (percent > 99.95) {
            return "> 99.9 %";
        }
        return percent < 0.05 ? "< 0.1 %" : one(percent) + " %";
    }

    static String whole(double value) {
        return String.valueOf(Math.round(value)).replace('-', '−');
    }

    static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replace('-', '−');
    }
}
