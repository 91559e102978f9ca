package wainbook.pack.act;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import wainbook.pack.PackSaying.Outside;

/**
 * How a pack is kept: 30 to 50 % charged, dry, at 15 to 25 °C. Common practice, no source; the pack maker's window comes
 * first.
 */
public final class StorageWindow {

    public static final BigDecimal LEAST_PERCENT = new BigDecimal("30");
    public static final BigDecimal MOST_PERCENT = new BigDecimal("50");
    public static final BigDecimal COLDEST_C = new BigDecimal("15");
    public static final BigDecimal WARMEST_C = new BigDecimal("25");

    private StorageWindow() {}

    public static List<Outside> outside(BigDecimal chargePercent, BigDecimal temperatureC, boolean dry) {
        var outside = new ArrayList<Outside>();
        if (chargePercent.compareTo(LEAST_PERCENT) < 0) {
            outside.add(Outside.CHARGE_LOW);
        }
        if (chargePercent.compareTo(MOST_PERCENT) > 0) {
            outside.add(Outside.CHARGE_HIGH);
        }
        if (temperatureC.compareTo(COLDEST_C) < 0) {
            outside.add(Outside.COLD);
        }
        if (temperatureC.compareTo(WARMEST_C) > 0) {
            outside.add(Outside.WARM);
        }
        if (!dry) {
            outside.add(Outside.DAMP);
        }
        return List.copyOf(outside);
    }
}
