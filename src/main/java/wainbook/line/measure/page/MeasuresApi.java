package wainbook.line.measure.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Indicator;
import wainbook.engineering.flow.status.LineBalance;
import wainbook.engineering.flow.status.Little;
import wainbook.gate.passage.Yield;
import wainbook.line.measure.HelpTimes;
import wainbook.line.measure.Measures;
import wainbook.line.measure.Pasts;
import wainbook.line.measure.Period;
import wainbook.line.measure.StationTimes;
import wainbook.line.measure.Throughput;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.process.Station;
import wainbook.works.shift.WorksDay;

/** Measures of the line for scripts. What a period has nothing to divide by is absent. */
@Path("/api/v1/line/measures")
public class MeasuresApi {

    /**
     * Times are working minutes of the line, but those at stations and of calls, which are minutes of the clock.
     *
     * @param end to where the period is known: its last day, or now
     * @param lost minutes that stations waited, by cause
     * @param shiftingMinutes in which the bottleneck was passing from one station to another
     */
    public record Answer(
            LocalDate from,
            LocalDate to,
            Instant end,
            String kind,
            Optional<Integer> taktMinutes,
            double workingMinutes,
            int made,
            int reworked,
            OptionalDouble planned,
            OptionalDouble cycleMinutes,
            OptionalDouble leadMedianMinutes,
            OptionalDouble leadEightInTenMinutes,
            List<Throughput.Aged> onTheLine,
            Law little,
            List<Gate> gates,
            OptionalDouble rolledYield,
            OptionalDouble lineEfficiency,
            Map<Indicator, Double> indicators,
            List<AtStation> stations,
            List<LostTo> lost,
            double shiftingMinutes,
            Optional<String> bottleneckAtEnd,
            Optional<String> turningPoint,
            List<Calls> calls) {}

    /** Little’s law over the period. */
    public record Law(
            double meanNumber, int vehicles, OptionalDouble meanHours, int atBegin, int atEnd, boolean exact) {}

    /** A gate’s first-pass yield. */
    public record Gate(String stage, int vehicles, int firstPass) {}

    /** What a station did. */
    public record AtStation(
            String station,
            String stage,
            Map<Doing, Double> minutes,
            Map<Indicator, Double> indicators,
            double soleBottleneckMinutes) {}

    /** Station-minutes waited for one cause; without a station nothing was released. */
    public record LostTo(Optional<String> station, Doing doing, double minutes, double upTo) {}

    /** Calls of one kind; minutes of the clock. */
    public record Calls(
            String help,
            int calls,
            int stoodStill,
            OptionalDouble answerMedianMinutes,
            OptionalDouble answerNineInTenMinutes,
            OptionalDouble settleMedianMinutes,
            OptionalDouble settleNineInTenMinutes) {}

    private final Pasts pasts;
    private final WorksDay day;
    private final SignedIn signedIn;

    MeasuresApi(Pasts pasts, WorksDay day, SignedIn signedIn) {
        this.pasts = pasts;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Response measures(@BeanParam AskedPeriod asked) {
        Instant now = signedIn.now().at();
        Form form = asked.form(day, day.of(now));
        if (!form.right()) {
            String faults = form.faults().stream()
                    .map(fault -> fault.field() + ": " + fault.text())
                    .collect(Collectors.joining(" "));
            return Problem.of(400, "line.measuresBad", faults).response();
        }
        Period period = Period.of(LocalDate.parse(form.value("from")), LocalDate.parse(form.value("to")), day, now);
        return Response.ok(answer(pasts.of(period, asked.kind(), now))).build();
    }

    private static Answer answer(Measures found) {
        Throughput line = found.throughput();
        return new Answer(
                found.period().from(),
                found.period().to(),
                found.period().end(),
                found.kind(),
                found.taktMinutes(),
                line.workingMinutes(),
                line.finished().size(),
                line.reworked().size(),
                found.planned(),
                line.cycleMinutes(),
                line.leadMedian(),
                line.leadMost(),
                line.wip(),
                law(line.little()),
                found.yield().stages().stream().map(MeasuresApi::gate).toList(),
                found.yield()
                        .rolled()
                        .map(rolled -> OptionalDouble.of(rolled.results().rolledShare()))
                        .orElse(OptionalDouble.empty()),
                found.balance()
                        .map(LineBalance::efficiency)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                indicators(MeasuresView.OF_THE_LINE, found::indicator),
                found.stations().stream().map(MeasuresApi::station).toList(),
                found.lost().stream()
                        .map(one ->
                                new LostTo(one.station().map(Station::code), one.doing(), one.minutes(), one.upTo()))
                        .toList(),
                found.bottleneck().shiftingMinutes(),
                found.bottleneckAtEnd().stream().mapToObj(at -> code(found, at)).findFirst(),
                found.turningPoint().stream().mapToObj(at -> code(found, at)).findFirst(),
                found.calls().stream().map(MeasuresApi::calls).toList());
    }

    private static String code(Measures found, int station) {
        return found.stations().get(station).station().code();
    }

    private static Law law(Little little) {
        return new Law(
                little.windowMillis() > 0 ? little.meanNumber() : 0,
                little.vehicles(),
                little.vehicles() > 0 ? OptionalDouble.of(little.meanHours()) : OptionalDouble.empty(),
                little.atBegin(),
                little.atEnd(),
                little.exact());
    }

    private static Gate gate(Yield.StageYield stage) {
        return new Gate(stage.stage(), stage.vehicles(), stage.firstPass());
    }

    private static AtStation station(StationTimes one) {
        return new AtStation(
                one.station().code(),
                one.stage().code(),
                new EnumMap<>(one.minutes()),
                indicators(MeasuresView.OF_A_STATION, one::indicator),
                one.soleMinutes());
    }

    private static Map<Indicator, Double> indicators(List<Indicator> shown, Function<Indicator, OptionalDouble> of) {
        Map<Indicator, Double> found = new EnumMap<>(Indicator.class);
        shown.forEach(one -> of.apply(one).ifPresent(value -> found.put(one, value)));
        return found;
    }

    private static Calls calls(HelpTimes one) {
        return new Calls(
                one.help().name(),
                one.calls(),
                one.stoodStill(),
                one.answerMedian(),
                one.answerMost(),
                one.settleMedian(),
                one.settleMost());
    }
}
