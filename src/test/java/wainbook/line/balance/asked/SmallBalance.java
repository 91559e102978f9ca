package wainbook.line.balance.asked;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Search;
import wainbook.line.balance.asked.PairRule.Sort;
import wainbook.line.balance.asked.Question.Times;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.KindShare;
import wainbook.line.balance.content.Content.Place;

/** Three stages of one kind of vehicle, whose best balance can be told by hand. */
final class SmallBalance {

    /** Cutting 40, grinding 30 behind it, draining fuel 20; welding 30; painting 10. In all 130 minutes. */
    static final Content LINE = line(
            item("strip", "cut", 40, false),
            item("strip", "grind", 30, false, "strip/cut"),
            item("strip", "fuel", 20, false),
            item("fit", "weld", 30, false),
            item("final", "paint", 10, false));

    private SmallBalance() {}

    static Content line(Item... items) {
        return new Content(
                List.of(
                        new Place("strip", 1, "Strip", 1),
                        new Place("fit", 2, "Fit", 1),
                        new Place("final", 3, "Final", 1)),
                List.of(new KindShare("bus", 1)),
                List.of(items),
                Optional.of(50));
    }

    static Item item(String stage, String key, double minutes, boolean bound, String... after) {
        return new Item(stage + "/" + key, stage, key, "Do " + key, Map.of("bus", minutes), List.of(after), bound);
    }

    static Question question(int reach, Map<String, Integer> persons, PairRule... rules) {
        return new Question(
                Optional.empty(),
                Optional.empty(),
                reach,
                List.of(),
                List.of(),
                true,
                20,
                List.of(rules),
                persons,
                Times.PLANNED);
    }

    static Question free(PairRule... rules) {
        return question(2, Map.of(), rules);
    }

    static PairRule together(String one, String other) {
        return new PairRule(Sort.TOGETHER, keys(one), keys(other), 0);
    }

    static PairRule apart(String one, String other) {
        return new PairRule(Sort.APART, keys(one), keys(other), 0);
    }

    static PairRule distance(String one, int stations, String other) {
        return new PairRule(Sort.DISTANCE, keys(one), keys(other), stations);
    }

    private static List<String> keys(String some) {
        return Stream.of(some.split(" ")).filter(key -> !key.isEmpty()).toList();
    }

    static Found find(Content content, Question question) {
        var asked = new Asked(content, question);
        return Search.of(asked.work(), asked.aim(question.seconds()))
                .orElseThrow()
                .find(progress -> {});
    }

    /** From 1. */
    static int at(Found found, String id) {
        List<List<String>> placed = found.placed().orElseThrow();
        return 1
                + placed.indexOf(placed.stream()
                        .filter(here -> here.contains(id))
                        .findFirst()
                        .orElseThrow());
    }
}
