package wainbook.line.balance.page;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.line.balance.asked.Asked;
import wainbook.line.balance.asked.Objections;
import wainbook.line.balance.asked.PairRule;
import wainbook.line.balance.asked.PairRule.Sort;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.asked.Question.Times;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Place;
import wainbook.page.Filled;

/** The form by which a better balance is asked for: preset, read, checked. Its fields are called as in the question for scripts. */
final class AskedFor {

    static final String TAKT = "takt";
    static final String STATIONS = "stations";
    static final String STAYS = "stays";

    private static final List<String> PLAIN =
            List.of("aim", "taktMinutes", "overrunPercent", "reach", "then", "seconds", "itemsThatStay", "times");
    private static final List<String> OF_RULE = List.of("one", "sort", "other", "stations");
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");

    private AskedFor() {}

    /** As it was asked last. */
    static Filled preset(Filled filled, Content content, Optional<Question> last) {
        Filled preset = filled.with("aim", last.flatMap(Question::taktMinutes).isPresent() ? TAKT : STATIONS)
                .with("taktMinutes", text(last.flatMap(Question::taktMinutes).or(content::taktMinutes)))
                .with("overrunPercent", text(last.flatMap(Question::overrunPercent)))
                .with("reach", text(last.map(Question::reach).or(() -> Optional.of(1))))
                .with("then", last.map(Question::leastChange).orElse(true) ? "least" : "smoothest")
                .with("seconds", text(last.map(Question::seconds).or(() -> Optional.of(30))))
                .with("times", last.map(Question::times).orElse(Times.PLANNED).name())
                .with(
                        "itemsThatStay",
                        last.map(asked -> keys(asked.itemsThatStay())).orElse(""));
        for (Place place : content.stages()) {
            preset = preset.with(
                    persons(place.stage()),
                    text(last.map(asked -> asked.persons(place.stage())).or(() -> Optional.of(1))));
        }
        List<PairRule> rules = last.map(Question::rules).orElse(List.of());
        for (int i = 0; i < rules.size(); i++) {
            PairRule rule = rules.get(i);
            preset = preset.with(rule(i, "one"), keys(rule.one()))
                    .with(rule(i, "sort"), rule.sort().name())
                    .with(rule(i, "other"), keys(rule.other()))
                    .with(rule(i, "stations"), rule.sort() == Sort.DISTANCE ? String.valueOf(rule.stations()) : "");
        }
        return preset;
    }

    /** What was sent; rules in which nothing stands are left out, and those behind them move up. */
    static Filled sent(MultivaluedMap<String, String> sent, Content content) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : PLAIN) {
            filled = filled.with(field, sent.getFirst(field));
        }
        for (Place place : content.stages()) {
            filled = filled.with(persons(place.stage()), sent.getFirst(persons(place.stage())));
        }
        int rules = 0;
        for (int i = 0; i < Question.MOST_RULES; i++) {
            int row = i;
            if (Stream.of("one", "other", "stations").allMatch(part -> blank(sent.getFirst(rule(row, part))))) {
                continue;
            }
            for (String part : OF_RULE) {
                filled = filled.with(rule(rules, part), sent.getFirst(rule(i, part)));
            }
            rules++;
        }
        return filled;
    }

    static List<String> staying(MultivaluedMap<String, String> sent) {
        return Optional.ofNullable(sent.get(STAYS)).orElse(List.of());
    }

    static Filled checked(Filled filled, Content content, List<String> stagesThatStay) {
        Filled checked = filled;
        if (filled.value("aim").equals(TAKT)) {
            checked = number(checked, "taktMinutes", 1, Question.LONGEST_TAKT_MIN);
        }
        if (!filled.value("overrunPercent").isEmpty()) {
            checked = number(checked, "overrunPercent", 0, Question.MOST_PERCENT);
        }
        checked = number(checked, "reach", 0, content.stages().size());
        checked = number(checked, "seconds", 1, Question.LONGEST_S);
        for (Place place : content.stages()) {
            if (!filled.value(persons(place.stage())).isEmpty()) {
                checked = number(checked, persons(place.stage()), 1, Question.MOST_PERSONS);
            }
        }
        return checked.refused(Objections.to(new Asked(content, question(filled, content, stagesThatStay))));
    }

    private static Filled number(Filled filled, String field, int least, int most) {
        return read(filled, field, least, most).isPresent()
                ? filled
                : filled.wrong(field, "line.wholeNumber", least, most);
    }

    /** Figures that cannot be read count as if they were not there. */
    static Question question(Filled filled, Content content, List<String> stagesThatStay) {
        return new Question(
                filled.value("aim").equals(TAKT)
                        ? read(filled, "taktMinutes", 1, Question.LONGEST_TAKT_MIN)
                        : Optional.empty(),
                read(filled, "overrunPercent", 0, Question.MOST_PERCENT),
                read(filled, "reach", 0, Question.FARTHEST).orElse(1),
                stagesThatStay,
                keys(filled, "itemsThatStay"),
                !filled.value("then").equals("smoothest"),
                read(filled, "seconds", 1, Question.LONGEST_S).orElse(1),
                IntStream.range(0, rules(filled)).mapToObj(i -> rule(filled, i)).toList(),
                content.stages().stream()
                        .map(Place::stage)
                        .collect(Collectors.toMap(
                                stage -> stage,
                                stage -> read(filled, persons(stage), 1, Question.MOST_PERSONS)
                                        .orElse(1))),
                filled.value("times").equals(Times.RECORDED.name()) ? Times.RECORDED : Times.PLANNED);
    }

    private static PairRule rule(Filled filled, int i) {
        Map<String, Sort> sorts = Stream.of(Sort.values()).collect(Collectors.toMap(Sort::name, sort -> sort));
        return new PairRule(
                sorts.getOrDefault(filled.value(rule(i, "sort")), Sort.APART),
                keys(filled, rule(i, "one")),
                keys(filled, rule(i, "other")),
                read(filled, rule(i, "stations"), 1, Question.FARTHEST).orElse(0));
    }

    /** How many rules stand in the form. */
    static int rules(Filled filled) {
        return (int) IntStream.range(0, Question.MOST_RULES)
                .takeWhile(i -> Stream.of("one", "other", "stations")
                        .anyMatch(part -> !filled.value(rule(i, part)).isEmpty()))
                .count();
    }

    static String rule(int i, String part) {
        return "rules[" + i + "]." + part;
    }

    static String persons(String stage) {
        return "persons[" + stage + "]";
    }

    private static boolean blank(String value) {
        return value == null || value.isBlank();
    }

    private static String text(Optional<Integer> value) {
        return value.map(String::valueOf).orElse("");
    }

    private static String keys(List<String> keys) {
        return String.join(" ", keys);
    }

    private static List<String> keys(Filled filled, String field) {
        return BETWEEN.splitAsStream(filled.value(field))
                .filter(key -> !key.isEmpty())
                .distinct()
                .toList();
    }

    private static Optional<Integer> read(Filled filled, String field, int least, int most) {
        return Optional.of(filled.value(field))
                .filter(text -> text.matches("[0-9]{1,6}"))
                .map(Integer::valueOf)
                .filter(value -> value >= least && value <= most);
    }
}
