package wainbook.engineering.tightening;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Order in which the fasteners of a circle, numbered clockwise, are tightened: crosswise, by halving the circle. An even
 * circle takes each fastener of the half circle's order with its opposite; an odd one steps by half the count.
 */
public final class TighteningOrder implements Calculation<TighteningOrder.Inputs, TighteningOrder.Results> {

    public record Inputs(@Domain(from = 1, to = 1000) int count) {}

    /** @param order each fastener once, counted from 1 */
    public record Results(List<Integer> order) {
        public Results {
            order = List.copyOf(order);
        }
    }

    @Override
    public String name() {
        return "tightening-order";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory("Flange guides, ASME PCC-1", "Appendix F, star order for 4, 8, 12 and 16"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.makerFirst"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<Integer> order = star(in.count()).map(place -> place + 1).toList();
        return Answer.worked(new Working<>(
                new Results(order),
                Optional.empty(),
                Sentence.of("engineering.tightening-order.none", in.count()),
                List.of(Step.of(
                        "firstAcross",
                        "n even: order(n/2), each with its opposite; n odd: i · (n−1)/2 mod n",
                        order.get(Math.min(1, order.size() - 1)),
                        "",
                        "n = %s: %s",
                        in.count(),
                        order.stream().map(String::valueOf).collect(Collectors.joining(" ")))),
                sources(),
                cautions()));
    }

    private static Stream<Integer> star(int count) {
        if (count <= 2) {
            return IntStream.range(0, count).boxed();
        }
        return count % 2 == 0
                ? star(count / 2).flatMap(place -> Stream.of(place, place + count / 2))
                : IntStream.range(0, count).mapToObj(step -> step * ((count - 1) / 2) % count);
    }
}
