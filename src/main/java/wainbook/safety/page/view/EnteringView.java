package wainbook.safety.page.view;

import java.util.List;
import wainbook.page.Filled;
import wainbook.page.Option;

/** The form by which a host lets a visitor in. */
public record EnteringView(Filled filled, List<Option> visitors, List<Option> permits) {

    /** Whether the form is drawn: not where it would be refused and nothing was typed yet. */
    public boolean drawn() {
        return filled.reasons().isEmpty() || !filled.value("area").isEmpty();
    }
}
