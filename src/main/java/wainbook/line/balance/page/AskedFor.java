package wainbook.line.balance.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import wainbook.line.balance.Content;
import wainbook.line.balance.Question;
import wainbook.page.Filled;

/** The form by which a better balance is asked for, read. */
final class AskedFor {

    static final String TAKT = "takt";
    static final String STATIONS = "stations";

    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");

    private AskedFor() {}

    static Filled preset(Filled filled, Content content) {
        return filled.with("aim", STATIONS)
                .with("taktMinutes", content.taktMinutes().map(String::valueOf).orElse(""))
                .with("overrunPercent", "")
                .with("reach", "1")
                .with("then", "least")
                .with("seconds", "30")
                .with("items", "");
    }

    static Filled checked(Filled filled, Content content) {
        Filled checked = filled;
        if (filled.value("aim").equals(TAKT)
                && number(filled, "taktMinutes", 1, Question.LONGEST_TAKT_MIN).isEmpty()) {
            checked = checked.wrong("taktMinutes", "line.balanceNumber", 1, Question.LONGEST_TAKT_MIN);
        }
        if (!filled.value("overrunPercent").isEmpty()
                && number(filled, "overrunPercent", 0, Question.MOST_PERCENT).isEmpty()) {
            checked = checked.wrong("overrunPercent", "line.balanceNumber", 0, Question.MOST_PERCENT);
        }
        if (number(filled, "reach", 0, content.stages().size()).isEmpty()) {
            checked = checked.wrong(
                    "reach", "line.balanceNumber", 0, content.stages().size());
        }
        if (number(filled, "seconds", 1, Question.LONGEST_S).isEmpty()) {
            checked = checked.wrong("seconds", "line.balanceNumber", 1, Question.LONGEST_S);
        }
        List<String> unknown = new ArrayList<>(items(filled));
        content.items().forEach(item -> unknown.remove(item.key()));
        return unknown.isEmpty() ? checked : checked.wrong("items", "line.balanceNoItem", String.join(", ", unknown));
    }

    static Question question(Filled filled, List<String> stagesThatStay) {
        return new Question(
                filled.value("aim").equals(TAKT)
                        ? number(filled, "taktMinutes", 1, Question.LONGEST_TAKT_MIN)
                        : Optional.empty(),
                number(filled, "overrunPercent", 0, Question.MOST_PERCENT),
                number(filled, "reach", 0, Question.FARTHEST).orElse(1),
                stagesThatStay,
                items(filled),
                !filled.value("then").equals("smoothest"),
                number(filled, "seconds", 1, Question.LONGEST_S).orElse(1));
    }

    private static List<String> items(Filled filled) {
        return BETWEEN.splitAsStream(filled.value("items"))
                .filter(key -> !key.isEmpty())
                .distinct()
                .toList();
    }

    private static Optional<Integer> number(Filled filled, String field, int least, int most) {
        return Optional.of(filled.value(field))
                .filter(text -> text.matches("[0-9]{1,6}"))
                .map(Integer::valueOf)
                .filter(value -> value >= least && value <= most);
    }
}
