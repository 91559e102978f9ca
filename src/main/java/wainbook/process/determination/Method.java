package wainbook.process.determination;

import static wainbook.process.determination.ToRead.number;
import static wainbook.process.determination.ToRead.onRegister;
import static wainbook.process.determination.ToRead.oneOf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How a quantity is determined: what is read in which order, what the sheet gives, and the calculation that judges it. */
@SuppressWarnings("ImmutableEnumChecker") // The lists are copies that nobody can change.
public enum Method {
    /** Against the vehicle's own pack: live work. The rail for the resistor follows from the first readings. */
    ISOLATION_VOLTMETER(
            "isolation-voltmeter",
            "Ω",
            List.of(
                    number("busV", "V"),
                    number("negativeToChassisV", "V"),
                    number("positiveToChassisV", "V"),
                    number("meterMOhm", "MΩ"),
                    onRegister("resistor"),
                    number("withResistorV", "V").thereafter()),
            List.of("nominalV", "workingV", "limitOhmPerVolt", "insertedOhm"),
            List.of("insertedTolerancePercent", "readingFloorV")),
    /** By an insulation tester with a voltage of its own. The prefix of the unit is chosen each time, never guessed. */
    ISOLATION_DIRECT(
            "isolation-direct",
            "Ω",
            List.of(
                    number("measured", ""),
                    oneOf("prefix", "kΩ", "MΩ", "GΩ"),
                    oneOf("shown", "value", "ceiling"),
                    number("testV", "V")),
            List.of("workingV", "limitOhmPerVolt"),
            List.of()),
    /** Current and voltage, four-wire, both ways round where the meter allows it. */
    BONDING(
            "bonding",
            "Ω",
            List.of(
                    number("currentA", "A"),
                    number("voltageMV", "mV"),
                    number("reversedVoltageMV", "mV").ifThere()),
            List.of(),
            List.of("leadOhm")),
    /** The time to the ratio, beside the one that the parts give. */
    PRECHARGE(
            "precharge",
            "s",
            List.of(number("supplyV", "V"), number("measuredS", "s")),
            List.of("capacitanceF", "resistanceOhm", "ratio", "tolerancePercent", "workingV"),
            List.of()),
    /** The time until the limit voltage, beside the one that the parts give. */
    DISCHARGE(
            "discharge",
            "s",
            List.of(number("startV", "V"), number("measuredS", "s")),
            List.of("capacitanceF", "resistanceOhm", "limitV", "limitS", "tolerancePercent", "workingV"),
            List.of()),
    /** Test resistors on each rail in turn, chosen from the insulation that is there. */
    MONITOR_TEST(
            "monitor-test-resistor",
            "s",
            List.of(
                    oneOf("alarmNegative", "alarm", "silent"),
                    number("alarmNegativeS", "s").ifThere(),
                    oneOf("alarmPositive", "alarm", "silent"),
                    number("alarmPositiveS", "s").ifThere(),
                    oneOf("clearNegative", "silent", "alarm").ifThere(),
                    oneOf("clearPositive", "silent", "alarm").ifThere(),
                    number("alarmResistorKOhm", "kΩ").ifThere(),
                    number("clearResistorKOhm", "kΩ").ifThere()),
            List.of(
                    "isolationOhm",
                    "setOhmPerVolt",
                    "workingV",
                    "deviceErrorPercent",
                    "legalOhmPerVolt",
                    "alarmWithinS"),
            List.of()),
    /** The insulation resistances of the vehicle's parts, in parallel. */
    ISOLATION_COMBINED("isolation-combined", "Ω", List.of(), List.of("workingV", "limitOhmPerVolt"), List.of()),
    /** The capacitances of the vehicle's parts against the chassis, all at the working voltage. */
    Y_CAPACITORS("y-capacitor-energy", "J", List.of(), List.of("voltageV"), List.of("limitJ")),
    /** Each pack by the meter and by what it reports, and how far apart they are before they are joined. */
    PACK_VOLTAGES("pack-voltages", "V", List.of(), List.of("workingV", "windowV", "agreementPercent"), List.of());

    private final String calculation;
    private final String unit;
    private final List<ToRead> readings;
    private final List<String> givenAlways;
    private final List<String> givenMaybe;

    Method(String calculation, String unit, List<ToRead> readings, List<String> givenAlways, List<String> givenMaybe) {
        this.calculation = calculation;
        this.unit = unit;
        this.readings = List.copyOf(readings);
        this.givenAlways = List.copyOf(givenAlways);
        this.givenMaybe = List.copyOf(givenMaybe);
    }

    public String calculation() {
        return calculation;
    }

    /** Of what is determined. */
    public String unit() {
        return unit;
    }

    /** Whether it sums over parts, so that a sheet names them. */
    public boolean ofParts() {
        return this == ISOLATION_COMBINED || this == Y_CAPACITORS || this == PACK_VOLTAGES;
    }

    public boolean insulation() {
        return calculation.startsWith("isolation");
    }

    public List<String> givenAlways() {
        return givenAlways;
    }

    public boolean takes(String given) {
        return givenAlways.contains(given) || givenMaybe.contains(given);
    }

    /** In the order of the work; for a method of parts one reading a part, or two. */
    public List<ToRead> readings(List<String> parts) {
        String partUnit = partUnit();
        var all = new ArrayList<>(readings);
        for (int part = 1; ofParts() && part <= parts.size(); part++) {
            all.add(number("part" + part, partUnit));
            if (this == PACK_VOLTAGES) {
                all.add(number("reported" + part, partUnit));
            }
        }
        return all;
    }

    private String partUnit() {
        return switch (this) {
            case Y_CAPACITORS -> "nF";
            case PACK_VOLTAGES -> "V";
            default -> "MΩ";
        };
    }

    /** The inputs that a sheet must give and does not. */
    public Stream<String> missing(List<Given> given) {
        return givenAlways.stream()
                .filter(name -> given.stream().noneMatch(known -> known.name().equals(name)));
    }
}
