package wainbook.page.calculation;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The unit that a field's name ends with, and how units are written. */
final class Units {

    private static final List<String> ENDINGS = List.of(
            "OhmPerVolt",
            "Ohm",
            "Percent",
            "Minutes",
            "MPa",
            "Mm2",
            "Mm",
            "Nm",
            "Kwh",
            "Kmh",
            "Kg",
            "N",
            "V",
            "A",
            "F",
            "S",
            "J",
            "W");
    private static final Map<String, String> WRITTEN = Map.of(
            "OhmPerVolt", "Ω/V",
            "Ohm", "Ω",
            "ohm", "Ω",
            "Percent", "%",
            "Minutes", "min",
            "Mm2", "mm²",
            "Mm", "mm",
            "Nm", "N·m",
            "Kwh", "kWh",
            "Kmh", "km/h");

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
        return WRITTEN.getOrDefault(unit, unit.equals("Kg") ? "kg" : unit);
    }
}
