package wainbook.station.determination;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wainbook.act.Reason;
import wainbook.process.determination.Given;
import wainbook.process.sheet.Ask;
import wainbook.station.StationSaying.Determined;

/**
 * The inputs that are not read.
 *
 * @param missing why one of them cannot be had
 */
public record GivenInputs(Map<String, BigDecimal> byName, Optional<Reason> missing) {

    public GivenInputs {
        byName = Map.copyOf(byName);
    }

    /** @param standing what an item of the sheet stands by on this vehicle, if that was determined */
    public static GivenInputs of(Ask.Determine ask, Function<String, Optional<Determined>> standing) {
        var byName = new LinkedHashMap<String, BigDecimal>();
        Optional<Reason> missing = Optional.empty();
        for (Given given : ask.given()) {
            Optional<BigDecimal> value =
                    given.value().or(() -> given.item().flatMap(standing).flatMap(said -> taken(given.name(), said)));
            value.ifPresent(known -> byName.put(given.name(), known));
            if (value.isEmpty()) {
                missing = Optional.of(Reason.of(
                        "station.determineFormerMissing",
                        Reason.WORKS_RULE,
                        given.item().orElse(given.name())));
            }
        }
        return new GivenInputs(byName, missing);
    }

    /** A monitor sees both rails together: a single rail's value would choose it the wrong resistor. */
    private static Optional<BigDecimal> taken(String name, Determined said) {
        return name.equals("isolationOhm") ? said.result("parallelOhm").map(BigDecimal::new) : said.value();
    }

    public Figures with(List<wainbook.station.StationSaying.Figure> readings, BigDecimal accuracyPercent) {
        return Figures.of(readings, byName, accuracyPercent);
    }
}
