package wainbook.order.specification.page;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Words;

/**
 * How many packs the duty takes, and why not fewer.
 *
 * @param oddsPercent that were asked for
 */
public record Answer(List<RowView> rows, String packType, BigDecimal oddsPercent) {

    public Optional<RowView> best() {
        return rows.stream().filter(RowView::feasible).findFirst();
    }

    /** How many packs, and why, in a sentence or two. */
    public String sentence() {
        return best().map(row -> Words.of(
                        "order.answer",
                        row.packs(),
                        packType,
                        oddsPercent.stripTrailingZeros().toPlainString(),
                        row.rangeAtEnd(),
                        row.payload(),
                        row.boundBy(),
                        row.rangeColdAtEnd()))
                .orElseGet(this::noAnswer);
    }

    private String noAnswer() {
        RowView nearest = rows.stream()
                .min(Comparator.<RowView>comparingInt(row -> row.reasons().size())
                        .thenComparing(row -> row.withMidday() ? 0 : 1)
                        .thenComparing(row -> -row.packs()))
                .orElseThrow();
        return Words.of("order.noAnswer", nearest.packs(), String.join(" ", nearest.briefly()));
    }

    /** What more packs would bring, or why fewer will not do. */
    public String why() {
        return best().map(row -> {
                    List<RowView> fewer = rows.stream()
                            .filter(other -> other.packs() < row.packs())
                            .toList();
                    List<RowView> more = rows.stream()
                            .filter(other -> other.packs() > row.packs() && other.feasible())
                            .toList();
                    String less = fewer.isEmpty()
                            ? ""
                            : Words.of(
                                    "order.whyFewer",
                                    row.packs() - 1,
                                    String.join(" ", fewer.get(fewer.size() - 1).briefly()));
                    String extra = more.isEmpty()
                            ? ""
                            : Words.of(
                                    "order.whyMore",
                                    more.stream()
                                            .map(other -> "" + other.packs())
                                            .collect(Collectors.joining(", ")));
                    return (less + " " + extra).strip();
                })
                .orElse("");
    }
}
