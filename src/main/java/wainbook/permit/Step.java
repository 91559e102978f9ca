package wainbook.permit;

import java.util.Arrays;
import java.util.Optional;
import wainbook.permit.PermitSaying.PermitClosed;
import wainbook.permit.PermitSaying.PermitHandedBack;
import wainbook.permit.PermitSaying.PermitReceived;
import wainbook.permit.PermitSaying.WorkStopped;

/** What is done with a permit that was issued. The word is what addresses say. */
public enum Step {
    RECEIVE("receipt", PermitReceived.class),
    STOP("stop", WorkStopped.class),
    HAND_BACK("hand-back", PermitHandedBack.class),
    CLOSE("closing", PermitClosed.class);

    private final String word;
    private final Class<? extends PermitSaying> says;

    Step(String word, Class<? extends PermitSaying> says) {
        this.word = word;
        this.says = says;
    }

    public String word() {
        return word;
    }

    Class<? extends PermitSaying> says() {
        return says;
    }

    public static Optional<Step> of(String word) {
        return Arrays.stream(values()).filter(step -> step.word.equals(word)).findFirst();
    }

    PermitSaying saying(int permit, Optional<String> words) {
        return switch (this) {
            case RECEIVE -> new PermitReceived(permit);
            case STOP -> new WorkStopped(permit, words);
            case HAND_BACK -> new PermitHandedBack(permit, words);
            case CLOSE -> new PermitClosed(permit, words);
        };
    }
}
