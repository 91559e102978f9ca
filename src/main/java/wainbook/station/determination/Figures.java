package wainbook.station.determination;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.station.StationSaying.Figure;

/**
 * Readings and given inputs by name.
 *
 * @param accuracyPercent half-width of a reading of the instrument in hand, in percent of it
 */
public record Figures(Map<String, String> byName, BigDecimal accuracyPercent) {

    private static final MathContext DIGITS = new MathContext(12);

    public static Figures of(List<Figure> readings, Map<String, BigDecimal> given, BigDecimal accuracyPercent) {
        var all = new LinkedHashMap<String, String>();
        readings.forEach(figure -> all.put(figure.name(), figure.value()));
        given.forEach((name, value) -> all.put(name, value.toPlainString()));
        return new Figures(Map.copyOf(all), accuracyPercent);
    }

    public boolean has(String name) {
        return byName.containsKey(name);
    }

    public String text(String name) {
        return byName.get(name);
    }

    public double number(String name) {
        return Double.parseDouble(text(name));
    }

    public Optional<Double> maybe(String name) {
        return Optional.ofNullable(text(name)).map(Double::valueOf);
    }

    public double accuracy() {
        return accuracyPercent.doubleValue();
    }

    /** As it is kept: in the digits that limits are compared in. */
    public static BigDecimal kept(double value) {
        return new BigDecimal(
                new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString());
    }

    public static Figure figure(String name, double value) {
        return new Figure(name, kept(value).toPlainString());
    }

    public static Figure figure(String name, Object value) {
        return new Figure(name, String.valueOf(value));
    }
}
