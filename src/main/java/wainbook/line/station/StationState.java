package wainbook.line.station;

import java.util.Locale;
import wainbook.engineering.flow.status.Doing;
import wainbook.page.Words;

/** The word and the sign for what a station is doing. What it is doing is told by {@code engineering.flow.status}. */
public enum StationState {
    WORKING("working", "quiet"),
    OVER_TAKT("clock", "warn"),
    HELD("hold", "danger"),
    AWAITING_SIGN_OFF("signature", "must"),
    BLOCKED("blocked", "warn"),
    STARVED("starved", "quiet"),
    DOWN("stop", "danger"),
    OFF_SHIFT("off", "quiet");

    private final String sign;
    private final String meaning;

    StationState(String sign, String meaning) {
        this.sign = sign;
        this.meaning = meaning;
    }

    public static StationState of(Doing doing) {
        return valueOf(doing.name());
    }

    /** The name of the sign that stands beside the word. */
    public String sign() {
        return sign;
    }

    /** Which of the four meanings of IEC 60073 it has, or none. */
    public String meaning() {
        return meaning;
    }

    public String word() {
        return Words.of("line.state." + name().toLowerCase(Locale.ROOT));
    }
}
