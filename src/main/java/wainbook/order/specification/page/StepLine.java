package wainbook.order.specification.page;

import java.util.Optional;

/**
 * One step of how a row was worked out.
 *
 * @param link to the same as a calculation of its own
 */
public record StepLine(
        String name, String formula, String figures, String value, String unit, String source, Optional<String> link) {}
