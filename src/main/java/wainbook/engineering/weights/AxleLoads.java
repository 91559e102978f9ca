package wainbook.engineering.weights;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.Always;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Limit;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Verdict;

/**
 * Loads of the axles from what was weighed and what goes in and out, held against their limits, and the greatest payload at its place. The
 * verdict is that of the limit with the least room.
 */
public final class AxleLoads implements Calculation<AxleLoads.Inputs, AxleLoads.Results> {

    private static final int MOST_ITEMS = 1000;

    /** @param wheelbaseM to the effective centre of the rear group */
    public record Inputs(
            @Domain(above = 0) double wheelbaseM,
            @Domain(from = 0) double emptyFrontKg,
            @Domain(from = 0) double emptyRearKg,
            @Size(to = MOST_ITEMS) List<Item> items,
            @Domain(above = 0) double frontLimitKg,
            @Domain(above = 0) double rearLimitKg,
            @Domain(above = 0) double grossLimitKg,
            @Domain(from = 0, below = 1) double steeringShareMin)
            implements Checked {
        public Inputs {
            items = List.copyOf(items);
        }

        @Override
        public List<Fault> faults() {
            return payload().count() > 1 ? List.of(Fault.of("items", "onePayload", Item.PAYLOAD)) : List.of();
        }

        private Stream<Item> payload() {
            return items.stream().filter(Item::payload);
        }

        private TwoAxles without() {
            return carrying(items.stream().filter(item -> !item.payload()));
        }

        private TwoAxles laden() {
            return carrying(items.stream());
        }

        private TwoAxles carrying(Stream<Item> some) {
            var axles = new TwoAxles(wheelbaseM, emptyFrontKg, emptyRearKg);
            for (Item item : some.toList()) {
                axles = axles.with(item.massKg(), item.fromFrontM());
            }
            return axles;
        }

        private AxleLimits limits() {
            return new AxleLimits(frontLimitKg, rearLimitKg, grossLimitKg, steeringShareMin);
        }
    }

    /**
     * @param steeringShare of the total on the front axle
     * @param payloadLimitKg for the item named {@code payload}, where there is one; below nought if a limit is passed without it
     */
    public record Results(
            double frontKg,
            double rearKg,
            double totalKg,
            double steeringShare,
            @Always Optional<Double> payloadLimitKg,
            @Always Optional<Binding> binding) {}

    @Override
    public String name() {
        return "axle-loads";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("Statics, any textbook", "forces and moments balance"),
                Source.seen(
                        "Directive 96/53/EC, as restated in summaries",
                        "axles and totals; 2 t more in total without emissions, axles unchanged"),
                Source.memory("National rules", "a fifth of the laden total on the steered axle, or a quarter"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.weighbridgeFirst"), Sentence.of("engineering.caution.platesDecide"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        TwoAxles laden = in.laden();
        if (!(laden.frontKg() >= 0 && laden.rearKg() >= 0 && laden.totalKg() > 0)) {
            return Double.isFinite(laden.totalKg())
                    ? Answer.impossible("axle-lifts", laden.frontKg(), laden.rearKg())
                    : Answer.impossible("beyond-reckoning");
        }
        Optional<PayloadLimit> limit =
                in.payload().findFirst().map(payload -> in.limits().payload(in.without(), payload.fromFrontM()));
        var results = new Results(
                laden.frontKg(),
                laden.rearKg(),
                laden.totalKg(),
                laden.steeringShare(),
                limit.map(PayloadLimit::kg),
                limit.map(PayloadLimit::binding));
        return judged(results, decision(in, laden), figures(in, laden), steps(in, laden, limit));
    }

    private static Decision decision(Inputs in, TwoAxles laden) {
        record Judged(double used, Decision decision) {}
        return Stream.of(
                        new Judged(laden.frontKg() / in.frontLimitKg(), atMost(in.frontLimitKg(), laden.frontKg())),
                        new Judged(laden.rearKg() / in.rearLimitKg(), atMost(in.rearLimitKg(), laden.rearKg())),
                        new Judged(laden.totalKg() / in.grossLimitKg(), atMost(in.grossLimitKg(), laden.totalKg())),
                        new Judged(
                                in.steeringShareMin() / laden.steeringShare(),
                                Limit.atLeast(in.steeringShareMin()).judge(laden.steeringShare(), 0, "")))
                .max(Comparator.<Judged>comparingInt(one -> one.decision().verdict() == Verdict.FAIL ? 1 : 0)
                        .thenComparingDouble(Judged::used))
                .map(Judged::decision)
                .orElseThrow();
    }

    private static Decision atMost(double limitKg, double loadKg) {
        return Limit.atMost(limitKg).judge(loadKg, 0, "kg");
    }

    private static List<Object> figures(Inputs in, TwoAxles laden) {
        return List.of(
                Plain.beside(in.frontLimitKg(), laden.frontKg()),
                in.frontLimitKg(),
                Plain.beside(in.rearLimitKg(), laden.rearKg()),
                in.rearLimitKg(),
                Plain.beside(in.grossLimitKg(), laden.totalKg()),
                in.grossLimitKg(),
                Plain.beside(100 * in.steeringShareMin(), 100 * laden.steeringShare()),
                100 * in.steeringShareMin());
    }

    private static Step[] steps(Inputs in, TwoAxles laden, Optional<PayloadLimit> limit) {
        double added = in.items().stream().mapToDouble(Item::massKg).sum();
        Stream<Step> loads = Stream.of(
                Step.of(
                        "rearLoad",
                        "R = R₀ + Σ m · x / L",
                        laden.rearKg(),
                        "kg",
                        "%s + %s",
                        in.emptyRearKg(),
                        laden.rearKg() - in.emptyRearKg()),
                Step.of(
                        "frontLoad",
                        "F = F₀ + Σ m − Σ m · x / L",
                        laden.frontKg(),
                        "kg",
                        "%s + %s − %s",
                        in.emptyFrontKg(),
                        added,
                        laden.rearKg() - in.emptyRearKg()),
                Step.of(
                        "steeredShare",
                        "F / (F + R)",
                        laden.steeringShare(),
                        "",
                        "%s / %s",
                        laden.frontKg(),
                        laden.totalKg()));
        Stream<Step> most = limit.stream()
                .map(one -> Step.of(
                        "payloadLimit",
                        "least of gross, front, rear and steering, each by its own share of the payload",
                        one.kg(),
                        "kg",
                        "bound by: %s",
                        one.binding()));
        return Stream.concat(loads, most).toArray(Step[]::new);
    }
}
