package wainbook.waste.rate;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import wainbook.engineering.Answer;
import wainbook.engineering.weights.RecoveryRate;

/** Masses of what was taken out of one vehicle, parted as a rate asks, in kilograms. */
public record Recovery(List<Part> parts) {

    /**
     * One thing by the form of ISO 22628: what counts at pre-treatment, as a part, as metal, as recycled rest and as energy; what is
     * left of its mass counts nowhere.
     */
    public record Part(
            BigDecimal massKg,
            BigDecimal preTreatmentKg,
            BigDecimal dismantledKg,
            BigDecimal metalsKg,
            BigDecimal restKg,
            BigDecimal energyKg) {}

    public Recovery {
        parts = List.copyOf(parts);
    }

    public BigDecimal massKg() {
        return sum(Part::massKg);
    }

    public BigDecimal preTreatmentKg() {
        return sum(Part::preTreatmentKg);
    }

    public BigDecimal dismantledKg() {
        return sum(Part::dismantledKg);
    }

    public BigDecimal metalsKg() {
        return sum(Part::metalsKg);
    }

    public BigDecimal restKg() {
        return sum(Part::restKg);
    }

    public BigDecimal energyKg() {
        return sum(Part::energyKg);
    }

    private BigDecimal sum(Function<Part, BigDecimal> of) {
        return parts.stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** As the calculation takes it: pre-treatment and parts as reuse, metals and rest as recycling. */
    public RecoveryRate.Inputs inputs() {
        return new RecoveryRate.Inputs(
                massKg().doubleValue(),
                preTreatmentKg().add(dismantledKg()).doubleValue(),
                metalsKg().add(restKg()).doubleValue(),
                energyKg().doubleValue());
    }

    public Answer<RecoveryRate.Results> worked() {
        return new RecoveryRate().work(inputs());
    }

    /** The calculation with these inputs, opened. */
    public String path() {
        RecoveryRate.Inputs in = inputs();
        return "/calculations/recovery-rate?vehicleKg=" + plain(in.vehicleKg()) + "&reuseKg=" + plain(in.reuseKg())
                + "&recycleKg=" + plain(in.recycleKg()) + "&energyKg=" + plain(in.energyKg());
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
