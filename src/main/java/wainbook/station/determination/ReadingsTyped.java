package wainbook.station.determination;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.process.determination.ToRead;
import wainbook.process.sheet.Ask;
import wainbook.station.StationSaying.Figure;

/** Whether readings are readings at all, before they are judged: a script may send anything. */
public final class ReadingsTyped {

    private static final String DECIMAL = "-?\\d{1,9}(\\.\\d{1,9})?";

    private ReadingsTyped() {}

    public static List<Reason> faults(Ask.Determine ask, List<Figure> readings) {
        var faults = new ArrayList<Reason>();
        var seen = new HashSet<String>();
        for (Figure figure : readings) {
            Optional<ToRead> wanted = ask.readings().stream()
                    .filter(reading -> reading.name().equals(figure.name()))
                    .findFirst();
            if (wanted.isEmpty() || !seen.add(figure.name())) {
                faults.add(Reason.of("station.readingUnknown", Reason.WORKS_RULE, figure.name())
                        .liftedAt("#readings"));
            } else if (!fits(wanted.get(), figure.value())) {
                faults.add(Reason.of(
                                "station.readingNotOne",
                                Reason.WORKS_RULE,
                                Determining.label(ask, wanted.get()),
                                figure.value())
                        .liftedAt("#" + figure.name()));
            }
        }
        return faults;
    }

    private static boolean fits(ToRead wanted, String value) {
        if (wanted.code()) {
            return value.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}");
        }
        return wanted.choice() ? wanted.options().contains(value) : value.matches(DECIMAL);
    }
}
