package wainbook.order.specification.page;

import java.util.ArrayList;
import java.util.List;
import wainbook.order.specification.LimitsThatCount;
import wainbook.page.Words;

/** One limit with what it is and where it comes from. */
public record LimitLine(String what, String kg, String by, List<String> sources, List<String> asks) {

    static List<LimitLine> of(LimitsThatCount counted) {
        var lines = new ArrayList<LimitLine>();
        lines.add(line(Words.of("order.limit.gross"), counted.gross()));
        for (int i = 0; i < counted.axlesKg().size(); i++) {
            lines.add(line(Words.of("order.axle", i + 1), counted.axlesKg().get(i)));
        }
        counted.rearGroup().ifPresent(group -> lines.add(line(Words.of("order.limit.rearGroup"), group)));
        return lines;
    }

    private static LimitLine line(String what, LimitsThatCount.Limit limit) {
        return new LimitLine(
                what,
                RowView.whole(limit.kg()),
                Words.of("order.limitBy." + limit.by().name())
                        + limit.legal()
                                .kg()
                                .filter(kg -> limit.by() != LimitsThatCount.By.LAW)
                                .map(kg -> ", " + Words.of("order.limitLaw", kg))
                                .orElse(""),
                limit.legal().rules().stream()
                        .map(rule -> Words.of(
                                "order.limitSource",
                                rule.id(),
                                rule.source().document(),
                                rule.source().clause(),
                                Words.of("order.standing." + rule.source().standing())))
                        .toList(),
                limit.legal().asks().stream()
                        .map(ask -> Words.of("order.limitAsk." + ask.name()))
                        .toList());
    }
}
