package wainbook.order.specification.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wainbook.order.specification.LimitsThatCount;
import wainbook.page.Words;

/** One limit with what it is and where it comes from. */
public record LimitLine(String what, String kg, String by, List<String> sources, List<String> asks) {

    /** @param fastestKmh that the duty asks: a tyre’s load holds up to a speed */
    static List<LimitLine> of(LimitsThatCount counted, double fastestKmh) {
        var lines = new ArrayList<LimitLine>();
        lines.add(line(Words.of("order.limit.gross"), counted.gross(), Stream.of()));
        for (int i = 0; i < counted.axlesKg().size(); i++) {
            LimitsThatCount.Limit axle = counted.axlesKg().get(i);
            lines.add(line(Words.of("order.axle", i + 1), axle, tyres(axle, fastestKmh)));
        }
        counted.rearGroup().ifPresent(group -> lines.add(line(Words.of("order.limit.rearGroup"), group, Stream.of())));
        return lines;
    }

    private static Stream<String> tyres(LimitsThatCount.Limit axle, double fastestKmh) {
        if (axle.tyres().isEmpty()) {
            return Stream.of(Words.of("order.limitAsk.TYRES"));
        }
        BigDecimal holdsTo = axle.tyres().get().speedKmh();
        return holdsTo.doubleValue() < fastestKmh
                ? Stream.of(Words.of("order.limitAsk.TYRE_SPEED", holdsTo.toPlainString(), RowView.whole(fastestKmh)))
                : Stream.of();
    }

    private static LimitLine line(String what, LimitsThatCount.Limit limit, Stream<String> tyreAsks) {
        return new LimitLine(
                what,
                RowView.whole(limit.kg()),
                Words.of("order.limitBy." + limit.by().name())
                        + limit.legal()
                                .kg()
                                .filter(kg -> limit.by() != LimitsThatCount.By.LAW)
                                .map(kg -> ", " + Words.of("order.limitLaw", kg))
                                .orElse("")
                        + limit.tyres()
                                .map(tyres -> ". "
                                        + Words.of(
                                                "order.limitTyres",
                                                tyres.number(),
                                                tyres.loadKg().toPlainString(),
                                                RowView.whole(tyres.axleKg()),
                                                tyres.speedKmh().toPlainString()))
                                .orElse(""),
                limit.legal().rules().stream()
                        .map(rule -> Words.of(
                                "order.limitSource",
                                rule.id(),
                                rule.source().document(),
                                rule.source().clause(),
                                Words.of("order.standing." + rule.source().standing())))
                        .toList(),
                Stream.concat(
                                limit.legal().asks().stream().map(ask -> Words.of("order.limitAsk." + ask.name())),
                                tyreAsks)
                        .toList());
    }
}
