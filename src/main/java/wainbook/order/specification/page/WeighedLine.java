package wainbook.order.specification.page;

import java.util.List;
import java.util.UUID;
import wainbook.engineering.weights.weighing.AgainstPrediction;
import wainbook.engineering.weights.weighing.Weighbridge;
import wainbook.order.duty.Chosen;
import wainbook.order.specification.Weighings;
import wainbook.page.Words;

/**
 * An axle as predicted, beside the same on the weighbridge.
 *
 * @param form id of the nonconformity that is offered where they disagree
 */
public record WeighedLine(int axle, String item, AgainstPrediction both, UUID form) {

    /** Common practice, no source: scales of 20 kg steps, an axle weighed again differs by 15 kg. */
    private static final Weighbridge SCALES = new Weighbridge(20);

    private static final double REPEATED_KG = 15;

    /** Axles that were both predicted and weighed. */
    static List<WeighedLine> of(Chosen chosen, List<Weighings.AxleWeighed> weighed) {
        return weighed.stream()
                .flatMap(one -> chosen.predicted().stream()
                        .filter(predicted -> predicted.axle() == one.axle())
                        .map(predicted -> new WeighedLine(
                                one.axle(),
                                one.item(),
                                new AgainstPrediction(
                                        predicted.kg().doubleValue(),
                                        predicted.uncertaintyKg().doubleValue(),
                                        one.kg().doubleValue(),
                                        SCALES.uKg(one.kg().doubleValue(), REPEATED_KG)),
                                UUID.randomUUID())))
                .toList();
    }

    public boolean agrees() {
        return both.agrees();
    }

    public String predicted() {
        return RowView.whole(both.predictedKg()) + " ± " + RowView.whole(2 * both.predictedUKg());
    }

    public String weighed() {
        return RowView.whole(both.weighedKg()) + " ± " + RowView.whole(2 * both.weighedUKg());
    }

    public String difference() {
        return (both.differenceKg() > 0 ? "+" : "") + RowView.whole(both.differenceKg());
    }

    public String permitted() {
        return RowView.whole(both.permittedKg());
    }

    /** What the nonconformity says. */
    public String what() {
        return Words.of("order.weighedApart", axle, weighed(), predicted(), difference(), permitted());
    }
}
