package wainbook.isolation.page;

import java.util.stream.Collectors;
import wainbook.isolation.IsolationSaying.Observed;
import wainbook.page.Refusal;

/** Why a reading that was kept does not count. */
public final class NotCounted {

    private NotCounted() {}

    /** Each rule that it was not counted for. */
    public static String inWords(Observed said) {
        return said.notCountedFor().stream().map(Refusal::bare).collect(Collectors.joining(" "));
    }
}
