package wainbook.line.forecast.page;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.line.forecast.OddsInWords;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.line.forecast.whatif.Answer;
import wainbook.line.forecast.whatif.WhatIf;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * What would be, as its page shows it.
 *
 * @param answer empty as long as nothing is asked, or something cannot be answered
 */
public record WhatIfView(TheLineNow line, Optional<Answer> answer, Filled filled, Formats formats) {

    private static final double MIDDLE = 0.8;

    /** One vehicle, in words. */
    public record Row(
            String order,
            String kind,
            String before,
            String after,
            String beforeRange,
            String afterRange,
            String oddsBefore,
            String oddsAfter,
            String change,
            boolean earlier,
            boolean later) {}

    public String title() {
        return answer.map(found -> found.gain().lateMinutes())
                .map(saved -> saved.low() > 0
                        ? Words.of("line.whatIfTitleSaves", Math.round(saved.mean()))
                        : saved.high() < 0
                                ? Words.of("line.whatIfTitleCosts", Math.round(-saved.mean()))
                                : Words.of("line.whatIfTitleNothing"))
                .orElseGet(() -> Words.of("line.whatIfTitle"));
    }

    public boolean any() {
        return !line.vehicles().isEmpty();
    }

    public String asOf() {
        Instant now = line.calendar().now();
        return Words.of("line.forecastAsOf", formats.day(now), formats.clock(now));
    }

    public List<Option> stages() {
        return line.posts().stream()
                .map(post -> new Option(post.stage(), post.title()))
                .toList();
    }

    public List<Option> waiting() {
        return line.waiting().stream()
                .map(one -> new Option(one.order(), one.order()))
                .toList();
    }

    public List<Option> places() {
        return Arrays.stream(WhatIf.Turn.Place.values())
                .map(place -> new Option(place.name(), Words.of("line.whatIfPlaces." + place.name())))
                .toList();
    }

    public List<Option> holds() {
        return line.vehicles().stream()
                .flatMap(vehicle -> vehicle.stops().stream()
                        .filter(stop -> stop.sort() == Stop.HOLD)
                        .map(stop -> new Option(
                                vehicle.order() + "/" + stop.number(),
                                Words.of("line.whatIfHoldOf", stop.number(), vehicle.order()))))
                .toList();
    }

    public List<Row> rows() {
        return answer.stream()
                .flatMap(found -> found.vehicles().stream())
                .map(this::row)
                .toList();
    }

    private Row row(Answer.Row row) {
        Optional<PairedDifference> later = row.later();
        return new Row(
                row.vehicle().order(),
                row.vehicle().kind(),
                time(row.before()),
                time(row.after()),
                range(row.before()),
                range(row.after()),
                OddsInWords.of(row.oddsBefore()),
                OddsInWords.of(row.oddsAfter()),
                later.map(WhatIfView::change).orElseGet(() -> Words.of("line.whatIfUnknown")),
                later.filter(one -> one.high() < 0).isPresent(),
                later.filter(one -> one.low() > 0).isPresent());
    }

    private static String change(PairedDifference later) {
        if (later.low() <= 0 && later.high() >= 0) {
            return Words.of("line.whatIfSame");
        }
        boolean earlier = later.mean() < 0;
        return Words.of(
                earlier ? "line.whatIfEarlier" : "line.whatIfLater",
                tenths(Math.abs(later.mean())),
                tenths(earlier ? -later.high() : later.low()),
                tenths(earlier ? -later.low() : later.high()));
    }

    private static String tenths(double minutes) {
        return String.format(Locale.ROOT, Math.abs(minutes) < 10 ? "%.1f" : "%.0f", minutes);
    }

    private String time(Finish finish) {
        return at(calendar().notAfter(finish.median()));
    }

    private String range(Finish finish) {
        return Words.of(
                "line.forecastRange",
                at(calendar().notBefore(finish.interval(MIDDLE).lowMinute())),
                at(calendar().notAfter(finish.interval(MIDDLE).highMinute())));
    }

    private String at(Optional<Instant> known) {
        return known.map(when -> formats.day(when) + " " + formats.clock(when))
                .orElseGet(() ->
                        Words.of("line.forecastBeyond", formats.day(calendar().end())));
    }

    private Calendar calendar() {
        return line.calendar();
    }

    /** What it does for the line, a sentence each. */
    public List<String> sums() {
        return answer.stream()
                .flatMap(found -> Stream.of(
                        Words.of(
                                "line.whatIfLate",
                                Math.round(found.lateBefore()),
                                Math.round(found.lateAfter()),
                                Math.round(found.gain().lateMinutes().mean()),
                                Math.round(found.gain().lateMinutes().low()),
                                Math.round(found.gain().lateMinutes().high())),
                        Words.of(
                                "line.whatIfFinished",
                                Formats.date(found.by()),
                                tenths(found.finishedBefore()),
                                tenths(found.finishedAfter()),
                                hundredths(found.more().mean()),
                                hundredths(found.more().low()),
                                hundredths(found.more().high())),
                        Words.of("line.whatIfDraws", found.replications())))
                .toList();
    }

    private static String hundredths(double vehicles) {
        return String.format(Locale.ROOT, "%.2f", vehicles + 0.0);
    }
}
