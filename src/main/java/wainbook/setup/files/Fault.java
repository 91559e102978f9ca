package wainbook.setup.files;

import wainbook.act.Reason;

/** Something in a file that cannot be taken, and why. */
public record Fault(Place place, Reason reason) {

    /**
     * A fault of the file itself.
     *
     * @param rule the key of its text in {@code messages/setup}, which gets place, found and expected
     */
    static Fault of(Place place, String rule, String found, String expected) {
        return new Fault(place, Reason.of("setup." + rule, Reason.WORKS_RULE, place, found, expected));
    }

    @Override
    public String toString() {
        return place + " " + reason.key() + " " + reason.arguments();
    }
}
