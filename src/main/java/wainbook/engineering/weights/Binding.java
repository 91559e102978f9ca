package wainbook.engineering.weights;

import java.util.Locale;

/** Which limit a payload reaches first. */
public enum Binding {
    GROSS,
    FRONT,
    REAR,
    STEERING;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
