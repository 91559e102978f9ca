package wainbook.safety.page.view;

import wainbook.page.Filled;

/** The form of an induction; {@code visitor} is empty for somebody new. */
public record InductionView(Filled filled, String visitor, String name) {

    /** Whether the form is drawn: not where it would be refused and nothing was typed yet. */
    public boolean drawn() {
        return filled.reasons().isEmpty() || !filled.value("validTo").isEmpty();
    }
}
