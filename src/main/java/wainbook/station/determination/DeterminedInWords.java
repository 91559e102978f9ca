package wainbook.station.determination;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.page.Words;
import wainbook.process.determination.Given;
import wainbook.process.determination.Method;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Judgement;
import wainbook.station.determination.method.ByVoltmeter;

/** What was determined, and what is wanted, in words. The limits of the law and of the works are said apart. */
public final class DeterminedInWords {

    private DeterminedInWords() {}

    /** The value with its uncertainty and the method, without which it says little. */
    public static String figures(Determined said) {
        String value = said.value()
                .map(known -> Words.of(
                        said.openEnded()
                                ? "station.determinedAtLeast"
                                : said.uncertainty().filter(u -> u.signum() > 0).isPresent()
                                        ? "station.determinedWith"
                                        : "station.determinedPlain",
                        Quantities.of(known, said.unit()),
                        said.uncertainty()
                                .map(uncertainty -> Quantities.of(uncertainty, said.unit()))
                                .orElse("")))
                .orElseGet(() -> Words.of("station.determinedNone"));
        return Words.of("station.determinedBy", value, Words.of("station.method." + said.method()));
    }

    /** What did not pass, limit by limit. */
    public static List<String> findings(Determined said) {
        Optional<String> deadEarth =
                said.result("deadEarth").map(rail -> Words.of("station.determinedDeadEarth", rail));
        if (deadEarth.isPresent()) {
            return List.of(deadEarth.get());
        }
        Stream<String> silent =
                said.result("silent").filter("yes"::equals).stream().map(yes -> Words.of("station.determinedSilent"));
        Stream<String> falseAlarm = said.result("falseAlarm").filter("yes"::equals).stream()
                .map(yes -> Words.of("station.determinedFalseAlarm"));
        Stream<String> own = Stream.concat(
                Stream.concat(silent, falseAlarm),
                said.result("disagrees").stream().map(pack -> Words.of("station.determinedDisagrees", pack)));
        List<String> first = own.toList();
        Stream<String> limits = said.judgements().stream()
                .filter(judgement -> judgement.finding() != Finding.PASS)
                .filter(judgement ->
                        judgement.lower().isPresent() || judgement.upper().isPresent() || first.isEmpty())
                .filter(judgement -> said.method() != Method.MONITOR_TEST || first.isEmpty())
                .map(judgement -> finding(said, judgement));
        return Stream.of(first.stream(), limits, warnings(said))
                .flatMap(found -> found)
                .toList();
    }

    /** What does not fail and is still looked at: a part that leaks more than its share. */
    private static Stream<String> warnings(Determined said) {
        return said.result("belowBudget").stream()
                .map(parts -> Words.of(
                        "station.determinedBelowBudget",
                        parts,
                        Quantities.ohm(
                                Double.parseDouble(said.result("budgetOhm").orElseThrow()))));
    }

    private static String finding(Determined said, Judgement judgement) {
        return Words.of(
                judgement.finding() == Finding.UNDECIDED ? "station.determinedUndecided" : "station.determinedOutside",
                said.value().map(value -> Quantities.of(value, said.unit())).orElse("–"),
                limit(judgement, said.unit()));
    }

    /** A limit with whose it is. */
    public static String limit(Judgement judgement, String unit) {
        String ends = Stream.of(
                        judgement.lower().map(end -> Words.of("station.atLeastOf", Quantities.of(end, unit))),
                        judgement.upper().map(end -> Words.of("station.atMostOf", Quantities.of(end, unit))))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return Words.of("station.by." + judgement.by(), ends, judgement.source().orElse("–"));
    }

    public static String verdict(Determined said) {
        return Words.of("station.verdict." + said.finding());
    }

    /** Where the calculation shows itself with these inputs; absent where it was not reached. */
    public static Optional<String> calculation(Determined said) {
        return said.inputs().isEmpty()
                ? Optional.empty()
                : Optional.of(said.inputs().stream()
                        .map(figure -> figure.name() + "=" + URLEncoder.encode(figure.value(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining(
                                "&", "/calculations/" + said.method().calculation() + "?", "")));
    }

    /** What an item wants, before anything is read. */
    public static String wanted(Ask.Determine ask) {
        Stream<String> law = law(ask).stream();
        Stream<String> works = ask.works().map(limits -> works(limits, ask.method())).stream();
        return Stream.concat(law, works).collect(Collectors.joining(" · "));
    }

    private static Optional<String> law(Ask.Determine ask) {
        return switch (ask.method()) {
            case ISOLATION_VOLTMETER, ISOLATION_DIRECT, ISOLATION_COMBINED ->
                Optional.of(Words.of(
                        "station.wantedInsulation",
                        given(ask, "limitOhmPerVolt"),
                        given(ask, "workingV"),
                        Quantities.ohm(number(ask, "limitOhmPerVolt") * number(ask, "workingV")),
                        ByVoltmeter.LAW));
            case BONDING -> Optional.of(Words.of("station.wantedBonding"));
            case Y_CAPACITORS -> Optional.of(Words.of("station.wantedEnergy", given(ask, "voltageV")));
            case PRECHARGE, DISCHARGE -> Optional.of(Words.of("station.wantedTime", given(ask, "tolerancePercent")));
            case MONITOR_TEST -> Optional.of(Words.of("station.wantedAlarm", given(ask, "alarmWithinS")));
            case PACK_VOLTAGES ->
                Optional.of(Words.of("station.wantedPacks", given(ask, "windowV"), given(ask, "agreementPercent")));
        };
    }

    private static String works(Limits limits, Method method) {
        String ends = Stream.of(
                        limits.lower().map(end -> Words.of("station.atLeastOf", Quantities.of(end, method.unit()))),
                        limits.upper().map(end -> Words.of("station.atMostOf", Quantities.of(end, method.unit()))))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return Words.of("station.worksOf", ends);
    }

    private static String given(Ask.Determine ask, String name) {
        return ask.given().stream()
                .filter(known -> known.name().equals(name))
                .findFirst()
                .flatMap(Given::value)
                .map(value -> value.toPlainString())
                .orElse("0");
    }

    private static double number(Ask.Determine ask, String name) {
        return Double.parseDouble(given(ask, name));
    }
}
