package wainbook.process.determination;

import java.util.List;

/**
 * One thing that the person at the vehicle reads and types.
 *
 * @param unit as printed beside the field; empty for a choice
 * @param options what may be chosen; empty for a number
 * @param must whether nothing can be determined without it
 * @param later whether it is asked for only once the others are there, since what to do for it follows from them
 * @param code whether it is a code of something on the register and no figure
 */
public record ToRead(String name, String unit, List<String> options, boolean must, boolean later, boolean code) {

    public ToRead {
        options = List.copyOf(options);
    }

    static ToRead number(String name, String unit) {
        return new ToRead(name, unit, List.of(), true, false, false);
    }

    static ToRead oneOf(String name, String... options) {
        return new ToRead(name, "", List.of(options), true, false, false);
    }

    /** A thing on the register; a works that keeps none of its kind says nothing. */
    static ToRead onRegister(String name) {
        return new ToRead(name, "", List.of(), false, false, true);
    }

    ToRead ifThere() {
        return new ToRead(name, unit, options, false, later, code);
    }

    ToRead thereafter() {
        return new ToRead(name, unit, options, must, true, code);
    }

    public boolean choice() {
        return !options.isEmpty();
    }
}
