package wainbook.page.calculation;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The unit that a field's name ends with, and how units are written. */
final class Units {

    private static final List<String> ENDINGS = List.of(
            "OhmPerVolt",
            "KwhPerKm",
            "LitrePer100Km",
            "KgPerKwh",
            "KgPerLitre",
            "Ohm",
            "Percent",
            "Minutes",
            "MPa",
            "Mm2",
            "Mm",
            "Nm",
            "Kwh",
            "Kmh",
            "Km",
            "Kw",
            "Kg",
            "N",
            "M",
            "V",
            "A",
            "F",
            "S",
            "J",
            "W");
    private static final Map<String, String> WRITTEN = Map.ofEntries(
            Map.entry("OhmPerVolt", "Ω/V"),
            Map.entry("KwhPerKm", "kWh/km"),
            Map.entry("LitrePer100Km", "l/100 km"),
            Map.entry("KgPerKwh", "kg/kWh"),
            Map.entry("KgPerLitre", "kg/l"),
            Map.entry("Ohm", "Ω"),
            Map.entry("ohm", "Ω"),
            Map.entry("Percent", "%"),
            Map.entry("Minutes", "min"),
            Map.entry("Mm2", "mm²"),
            Map.entry("Mm", "mm"),
            Map.entry("M", "m"),
            Map.entry("S", "s"),
            Map.entry("Nm", "N·m"),
            Map.entry("Kwh", "kWh"),
            Map.entry("Kmh", "km/h"),
            Map.entry("Km", "km"),
            Map.entry("Kw", "kW"),
            Map.entry("Kg", "kg"));

    private Units() {}

    static Optional<String> of(String field) {
        return ENDINGS.stream()
                .filter(ending -> ends(field, ending))
                .findFirst()
                .map(Units::written);
    }

    private static boolean ends(String field, String ending) {
        int before = field.length() - ending.length() - 1;
        return before < 0
                ? ending.length() > 1 && field.equalsIgnoreCase(ending)
                : field.endsWith(ending) && !Character.isUpperCase(field.charAt(before));
    }

    static String written(String unit) {
        return WRITTEN.getOrDefault(unit, unit);
    }
}
