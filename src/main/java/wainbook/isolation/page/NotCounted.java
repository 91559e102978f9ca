package wainbook.isolation.page;

import java.util.stream.Collectors;
import wainbook.isolation.IsolationSaying.Observed;
import wainbook.page.Refusal;
import wainbook.page.Words;

/** Why a reading that was kept does not count. */
public final class NotCounted {

    private NotCounted() {}

    /** The first sentence of each rule that it was not counted for. */
    public static String inWords(Observed said) {
        return said.notCountedFor().stream()
                .filter(rule -> Words.find(rule).isPresent())
                .map(Refusal::bare)
                .collect(Collectors.joining(" "));
    }
}
