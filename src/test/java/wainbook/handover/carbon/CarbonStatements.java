package wainbook.handover.carbon;

import java.math.BigDecimal;
import java.util.List;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;

/** The statement of an invented truck. */
public final class CarbonStatements {

    private CarbonStatements() {}

    /** 80 000 km a year, 28 l/100 km, 1.25 kWh/km over 0.90, 280 kWh of packs, eight years. */
    public static Basis truck() {
        return new Basis(
                80_000,
                8,
                range("26", "28", "30"),
                range("1.10", "1.25", "1.45"),
                range("88", "90", "93"),
                new BigDecimal("280"),
                range("60", "75", "120"),
                BigDecimal.ZERO);
    }

    /** By the program's own factors of a year. */
    public static CarbonStated ofATruck(int year) {
        CarbonSets sets = CarbonSets.loaded();
        var used = sets.borrowed(year);
        return new CarbonStated(
                1, truck(), year, sets.of(year).orElseThrow().set(), used, new CarbonWorking(truck(), used).saved());
    }

    static List<BigDecimal> range(String low, String mid, String high) {
        return List.of(new BigDecimal(low), new BigDecimal(mid), new BigDecimal(high));
    }
}
