package wainbook.line.balance.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.line.balance.asked.PairRule.Sort;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/** The rules on items as they stand in the form: those that were typed, and room for more. */
public record RuleRows(Content content, Filled filled) {

    private static final int FEWEST = 3;
    private static final int ROOM = 2;

    /** One rule's fields by their names. */
    public record Row(int number, String one, String sort, String other, String stations, Filled filled) {
        public String value(String field) {
            return filled.value(field);
        }

        public boolean wrong(String field) {
            return filled.form().fault(field).isPresent();
        }

        /** All that is wrong with this rule. */
        public List<String> faults() {
            return Stream.of(one, other, stations)
                    .flatMap(field -> filled.form().fault(field).stream())
                    .distinct()
                    .toList();
        }
    }

    public List<Row> rows() {
        int rows = Math.min(Question.MOST_RULES, Math.max(FEWEST, AskedFor.rules(filled) + ROOM));
        return IntStream.range(0, rows)
                .mapToObj(i -> new Row(
                        i + 1,
                        AskedFor.rule(i, "one"),
                        AskedFor.rule(i, "sort"),
                        AskedFor.rule(i, "other"),
                        AskedFor.rule(i, "stations"),
                        filled))
                .toList();
    }

    /** Whether there is something to be seen. */
    public boolean open() {
        return AskedFor.rules(filled) > 0;
    }

    public List<Option> sorts() {
        return Stream.of(Sort.APART, Sort.TOGETHER, Sort.DISTANCE)
                .map(sort -> new Option(sort.name(), Words.of("line.balanceRule." + sort.name())))
                .toList();
    }

    /** Each key once, with what it stands for. */
    public List<Option> items() {
        return content.items().stream()
                .map(Content.Item::key)
                .distinct()
                .map(key -> content.called(key).get(0))
                .map(item -> new Option(item.key(), item.title()))
                .toList();
    }

    /** Two keys of this line, for the example. */
    public Optional<String> example() {
        List<Option> all = items();
        return all.size() < 2
                ? Optional.empty()
                : Optional.of(Words.of(
                        "line.balanceRulesExample",
                        all.get(0).value(),
                        all.get(all.size() - 1).value()));
    }
}
