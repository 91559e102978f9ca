package wainbook.order.specification;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.act.Reason;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.weighing.Prediction;
import wainbook.order.duty.Chosen;
import wainbook.order.limit.Legal;
import wainbook.order.specification.Specifying.ToSpecify;

/** Whether a number of packs may be chosen, and what is kept of it. */
public final class ChoiceRules {

    private ChoiceRules() {}

    /** Empty where it may. */
    static Optional<List<Reason>> against(ToSpecify asked, Worked worked) {
        List<Reason> missing = worked.missing();
        if (!missing.isEmpty()) {
            return Optional.of(missing);
        }
        if (worked.library().revision() != asked.library()) {
            return Optional.of(List.of(Reason.of("order.specificationStale", Reason.WORKS_RULE)
                    .liftedAt("/orders/" + asked.order() + "/specification")));
        }
        int places = worked.library().packs(asked.packType()).size();
        if (asked.packs() < 1 || asked.packs() > places) {
            return Optional.of(
                    List.of(Reason.of("order.packsNotThere", Reason.WORKS_RULE, asked.packs(), asked.packType(), places)
                            .liftedAt("/process/components")));
        }
        Working working = worked.working(asked.packType()).orElseThrow();
        SpecificationTable.Row row = row(asked, working);
        List<Reason> out = row.ruledOut().stream()
                .map(one -> RuledOutReasons.of(one, row, working))
                .toList();
        return out.isEmpty() ? Optional.empty() : Optional.of(out);
    }

    private static SpecificationTable.Row row(ToSpecify asked, Working working) {
        return working.table().rows().get(asked.packs() - 1);
    }

    static Chosen chosen(ToSpecify asked, Worked worked) {
        Working working = worked.working(asked.packType()).orElseThrow();
        SpecificationTable.Row row = row(asked, working);
        return new Chosen(
                asked.packs(),
                asked.packType(),
                worked.library().revision(),
                worked.specification().duty().orElseThrow().entry(),
                worked.specification().chassis().orElseThrow().entry(),
                limits(working.limits()),
                predicted(working, asked.packs()),
                new Chosen.Figures(
                        rounded(row.packs().payload().kg(), 0),
                        rounded(row.packs().kwhPerKm(), 3),
                        rounded(row.packs().rangeNewKm(), 1),
                        rounded(row.packs().rangeAtEndKm(), 1),
                        rounded(100 * row.packs().oddsAtEnd(), 2),
                        rounded(row.chargeHours(), 2)));
    }

    private static List<Chosen.Limit> limits(LimitsThatCount counted) {
        var limits = new ArrayList<Chosen.Limit>();
        limits.add(limit("gross", counted.gross()));
        IntStream.range(0, counted.axlesKg().size())
                .mapToObj(i -> limit("axle" + (i + 1), counted.axlesKg().get(i)))
                .forEach(limits::add);
        counted.rearGroup().map(group -> limit("rearGroup", group)).ifPresent(limits::add);
        return limits;
    }

    private static Chosen.Limit limit(String what, LimitsThatCount.Limit limit) {
        String source = limit.by() == LimitsThatCount.By.LAW
                ? limit.legal().rules().stream().map(Legal.Cited::id).collect(Collectors.joining(", "))
                : limit.by().name();
        return new Chosen.Limit(what, rounded(limit.kg(), 0), source);
    }

    /** The groups' uncertainties, shared out as their loads are. */
    public static List<Chosen.Predicted> predicted(Working working, int packs) {
        Prediction built = working.asBuilt(packs);
        List<Double> loads = working.chassis().loadsKg(built.loads());
        int steered = working.chassis().front().axles().size();
        return IntStream.range(0, loads.size())
                .mapToObj(i -> {
                    boolean front = i < steered;
                    double share = front
                            ? working.chassis().front().axles().get(i).share()
                            : working.chassis().rear().axles().get(i - steered).share();
                    return new Chosen.Predicted(
                            i + 1,
                            rounded(loads.get(i), 1),
                            rounded(share * (front ? built.frontUKg() : built.rearUKg()), 1));
                })
                .toList();
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
