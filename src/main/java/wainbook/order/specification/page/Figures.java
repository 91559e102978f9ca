package wainbook.order.specification.page;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import wainbook.order.specification.Bounds;
import wainbook.page.Filled;

/** Reads figures out of a form; what cannot be read becomes a fault at its field, and what was typed stays. */
final class Figures {

    private Filled filled;

    Figures(Filled filled) {
        this.filled = filled;
    }

    Filled filled() {
        return filled;
    }

    boolean right() {
        return filled.right();
    }

    String text(String field) {
        return filled.value(field);
    }

    boolean blank(String field) {
        return filled.value(field).isEmpty();
    }

    /** Nought, with a fault, where none can be read. */
    BigDecimal figure(String field) {
        if (blank(field)) {
            filled = filled.wrong(field, "order.figureMissing", Bounds.label(field));
            return BigDecimal.ZERO;
        }
        return read(field).orElse(BigDecimal.ZERO);
    }

    Optional<BigDecimal> perhaps(String field) {
        return blank(field) ? Optional.empty() : read(field);
    }

    int whole(String field) {
        BigDecimal value = figure(field);
        if (value.stripTrailingZeros().scale() > 0 || value.abs().compareTo(BigDecimal.valueOf(1_000_000)) > 0) {
            filled = filled.wrong(field, "order.figureNotWhole", Bounds.label(field));
            return 0;
        }
        return value.intValue();
    }

    Optional<Boolean> truth(String field) {
        return switch (text(field)) {
            case "true" -> Optional.of(true);
            case "false" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    <E extends Enum<E>> E choice(String field, E[] values) {
        return Arrays.stream(values)
                .filter(one -> one.name().equals(text(field)))
                .findFirst()
                .orElseGet(() -> {
                    filled = filled.wrong(field, "order.choiceMissing", Bounds.label(field));
                    return values[0];
                });
    }

    private Optional<BigDecimal> read(String field) {
        String typed = text(field).replace('−', '-').replace(" ", "");
        if (!typed.matches("-?[0-9]{1,9}(\\.[0-9]{1,6})?")) {
            filled = filled.wrong(field, "order.figureUnread", Bounds.label(field));
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(typed));
    }
}
