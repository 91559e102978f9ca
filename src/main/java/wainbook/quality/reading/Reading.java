package wainbook.quality.reading;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * One value that was read, with all that was kept beside it.
 *
 * @param number of its entry in the vehicle's record
 * @param column of a table, from 1; 0 where the item is no table
 * @param place number of the fastener or cell; 0 where the entry is one reading
 * @param lower and upper: the narrower of the works' and the law's limits
 * @param failed whether this value was outside its limits
 */
public record Reading(
        UUID entry,
        long number,
        String order,
        String vehicleKind,
        Instant at,
        Optional<Instant> deviceAt,
        String person,
        Optional<String> station,
        Optional<String> instrument,
        String stage,
        String item,
        int column,
        Optional<String> joint,
        int place,
        String unit,
        BigDecimal value,
        Optional<BigDecimal> target,
        Optional<BigDecimal> lower,
        Optional<BigDecimal> upper,
        boolean failed,
        boolean voided) {

    public boolean bothLimits() {
        return lower.isPresent() && upper.isPresent();
    }

    public String path() {
        return "/orders/" + order + "#entry-" + number;
    }
}
