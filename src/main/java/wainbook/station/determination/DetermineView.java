package wainbook.station.determination;

import java.math.BigDecimal;
import java.util.List;
import wainbook.act.Reason;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.determination.Method;
import wainbook.process.determination.ToRead;
import wainbook.process.sheet.Ask;
import wainbook.works.instruments.InstrumentRow;

/**
 * A determination as the station page asks for it.
 *
 * @param next what to do now that the first readings are there
 */
public record DetermineView(Ask.Determine ask, GivenInputs given, Form form, List<String> next) {

    private static final String NEXT = "station.next";

    /** A field of the form. */
    public record Field(
            String name, String label, String unit, boolean choice, boolean code, List<Option> options, boolean must) {}

    public static DetermineView of(Ask.Determine ask, GivenInputs given, Form form, List<Reason> refusals) {
        return new DetermineView(
                ask,
                given,
                form,
                refusals.stream()
                        .filter(DetermineView::next)
                        .map(reason -> Words.of(reason.key(), reason.arguments().toArray()))
                        .toList());
    }

    /** Whether a reason only says what comes next. */
    public static boolean next(Reason reason) {
        return reason.key().startsWith(NEXT);
    }

    /** In the order of the work; what follows from the first readings only once they are there. */
    public List<Field> fields() {
        return ask.readings().stream()
                .filter(reading -> !reading.later()
                        || !next.isEmpty()
                        || !form.value(reading.name()).isBlank()
                        || form.fault(reading.name()).isPresent())
                .filter(reading -> clearPossible() || !reading.name().startsWith("clear"))
                .map(this::field)
                .filter(field -> !field.code() || !field.options().isEmpty())
                .toList();
    }

    private Field field(ToRead reading) {
        return new Field(
                reading.name(),
                Determining.label(ask, reading),
                reading.unit(),
                reading.choice(),
                reading.code(),
                reading.code()
                        ? registered()
                        : reading.options().stream()
                                .map(option -> new Option(
                                        option,
                                        Words.find("station.reading.option." + option)
                                                .orElse(option)))
                                .toList(),
                reading.must());
    }

    private static List<Option> registered() {
        return InstrumentRow.ofKind(KnownResistor.KIND).stream()
                .map(row -> new Option(row.code, row.inWords()))
                .toList();
    }

    /** What the readings need before they are begun: which resistors, as chosen from the insulation that is there. */
    public List<String> before() {
        if (given.missing().isPresent()) {
            Reason reason = given.missing().get();
            return List.of(Words.of(reason.key(), reason.arguments().toArray()));
        }
        if (ask.method() == Method.ISOLATION_COMBINED) {
            double shareOhm = inputs().number("limitOhmPerVolt")
                    * inputs().number("workingV")
                    * ask.parts().size();
            return List.of(Words.of("station.budget", ask.parts().size(), Quantities.ohm(shareOhm)));
        }
        return ask.method() == Method.MONITOR_TEST
                ? TestResistors.of(inputs()).fold(DetermineView::resistors, DetermineView::none)
                : List.of();
    }

    private static List<String> resistors(TestResistors chosen) {
        String isolation = Quantities.ohm(chosen.given().isolationOhm());
        String alarm = Words.of(
                "station.resistorAlarm",
                Quantities.ohm(chosen.alarmOhm()),
                chosen.powerW(chosen.alarmOhm()),
                chosen.ratingV(),
                Quantities.ohm(chosen.together(chosen.alarmOhm())),
                isolation);
        String clear = chosen.clearOhm()
                .map(ohm -> Words.of(
                        "station.resistorClear",
                        Quantities.ohm(ohm),
                        chosen.powerW(ohm),
                        chosen.ratingV(),
                        Quantities.ohm(chosen.together(ohm))))
                .orElseGet(() -> Words.of("station.resistorClearNone", isolation));
        return List.of(alarm, clear);
    }

    private static List<String> none(wainbook.engineering.Refusal refusal) {
        return List.of(
                Words.of(
                        refusal.impossible().key(),
                        refusal.impossible().arguments().toArray()),
                Words.of(refusal.check().key(), refusal.check().arguments().toArray()));
    }

    private boolean clearPossible() {
        return ask.method() != Method.MONITOR_TEST
                || given.missing().isPresent()
                || TestResistors.of(inputs()).fold(chosen -> chosen.clearOhm().isPresent(), refusal -> true);
    }

    private Figures inputs() {
        return given.with(List.of(), BigDecimal.ZERO);
    }
}
