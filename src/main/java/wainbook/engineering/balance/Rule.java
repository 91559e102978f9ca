package wainbook.engineering.balance;

import java.util.Set;

/** What a works asks of a balance beside precedence. Stations are numbered from 1 in the order of the line. */
public sealed interface Rule {

    /** Done at the same station. */
    record Together(String one, String other) implements Rule {}

    /** Never at the same station: cutting and fuel. */
    record Apart(String one, String other) implements Rule {}

    /** At least so many stations from the one to the other: curing. */
    record Distance(String first, String then, int stations) implements Rule {}

    /** Only there: a lift, a pit, a crane; a place that is fenced and signed for high voltage; or where it is today. */
    record Only(Set<String> tasks, Set<Integer> stations) implements Rule {
        public Only {
            tasks = Set.copyOf(tasks);
            stations = Set.copyOf(stations);
        }
    }

    /** At no more than so many stations: each place for high-voltage work costs a fence, tools and authorised people. */
    record Gathered(Set<String> tasks, int stations) implements Rule {
        public Gathered {
            tasks = Set.copyOf(tasks);
        }
    }
}
