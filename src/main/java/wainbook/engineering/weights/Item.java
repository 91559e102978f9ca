package wainbook.engineering.weights;

import wainbook.engineering.Domain;

/**
 * Something that goes into a vehicle, or out of it.
 *
 * @param massKg below nought for what is taken out
 * @param fromFrontM its centre behind the front axle
 */
public record Item(
        String name,
        @Domain(from = -1e6, to = 1e6) double massKg,
        @Domain(from = -100, to = 100) double fromFrontM) {

    static final String PAYLOAD = "payload";

    boolean payload() {
        return name.equals(PAYLOAD);
    }
}
