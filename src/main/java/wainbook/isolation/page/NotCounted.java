package wainbook.isolation.page;

import java.util.stream.Collectors;
import wainbook.isolation.IsolationSaying.Observed;
import wainbook.page.Words;

/** Why a reading that was kept does not count. */
public final class NotCounted {

    private NotCounted() {}

    /** The first sentence of each rule that it was not counted for. */
    public static String inWords(Observed said) {
        return said.notCountedFor().stream().map(NotCounted::inWords).collect(Collectors.joining("; "));
    }

    private static String inWords(String rule) {
        return Words.find(rule).isPresent() ? Words.of(rule, "–", "–").replaceFirst("\\. .*", "") : rule;
    }
}
