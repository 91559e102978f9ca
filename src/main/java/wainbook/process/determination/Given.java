package wainbook.process.determination;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * An input that is not read: a figure of the sheet, or what an earlier item of the same sheet determined on the vehicle.
 *
 * @param name of the input, with its unit
 */
public record Given(String name, Optional<BigDecimal> value, Optional<String> item) {

    public Given {
        if (!name.matches("[a-z][A-Za-z]{0,59}")) {
            throw new IllegalArgumentException("a given input is named like workingV, not: " + name);
        }
        if (value.isPresent() == item.isPresent()) {
            throw new IllegalArgumentException(name + " is either a figure or taken from an earlier item");
        }
    }
}
