package wainbook.process.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.process.sheet.CheckItem;

/** What comes after what within one sheet. */
record Precedence(List<CheckItem> items) {

    List<Reason> faults() {
        Map<String, CheckItem> known = new LinkedHashMap<>();
        items.forEach(item -> known.putIfAbsent(item.key(), item));
        var faults = new ArrayList<Reason>();
        for (CheckItem item : items) {
            item.after().stream()
                    .filter(key -> !known.containsKey(key))
                    .forEach(key -> faults.add(Reason.of("process.unknownAfter", Reason.WORKS_RULE, item.key(), key)));
            item.dependsOn().stream()
                    .filter(dependence -> dependence.sort() == CheckItem.Dependence.Sort.ITEM)
                    .filter(dependence -> !known.containsKey(dependence.code()))
                    .forEach(dependence -> faults.add(
                            Reason.of("process.unknownItem", Reason.WORKS_RULE, item.key(), dependence.code())));
        }
        Set<String> stuck = stuck(known);
        if (!stuck.isEmpty()) {
            List<String> circle = circle(known, stuck);
            faults.add(
                    Reason.of("process.circleInAfter", Reason.WORKS_RULE, circle.get(0), String.join(" → ", circle)));
        }
        return faults;
    }

    /** What is left when everything whose predecessors are done is taken away, again and again. */
    private static Set<String> stuck(Map<String, CheckItem> known) {
        var left = new HashMap<>(known);
        while (left.values().removeIf(item -> item.after().stream().noneMatch(left.keySet()::contains))) {}
        return left.keySet();
    }

    /** Walks backwards within what is stuck until an item comes round again, and shows that round from its first item. */
    private static List<String> circle(Map<String, CheckItem> known, Set<String> stuck) {
        var walked = new ArrayList<String>();
        var seen = new HashSet<String>();
        String key = known.keySet().stream().filter(stuck::contains).findFirst().orElseThrow();
        while (seen.add(key)) {
            walked.add(0, key);
            key = known.get(key).after().stream()
                    .filter(stuck::contains)
                    .findFirst()
                    .orElseThrow();
        }
        List<String> round = new ArrayList<>(walked.subList(0, walked.indexOf(key) + 1));
        round.add(0, key);
        return round;
    }
}
