package wainbook.line.forecast.sequence.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import wainbook.line.forecast.OddsInWords;
import wainbook.line.forecast.sequence.Proposal;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.page.Formats;
import wainbook.page.Words;

/** Those in front of the line, one below the other: in the order proposed, if one is; else in today's. */
public record SequenceTable(TheLineNow line, Optional<Proposal> proposal, Formats formats) {

    private static final char NO_BREAK = '\u00a0';
    private static final String UNKNOWN = "";

    /** One vehicle, in words. */
    public record Row(
            int place,
            String order,
            String kind,
            boolean here,
            String today,
            String promised,
            String oddsToday,
            String odds,
            boolean gains,
            boolean loses,
            String finishToday,
            String finish) {}

    List<Row> rows() {
        return proposal.map(found -> placed(found.shown(), this::row))
                .orElseGet(() -> placed(line.waiting(), SequenceTable::row));
    }

    /** Times by ISO 8601 and odds as a share, for a spreadsheet to count with. */
    List<List<String>> cells() {
        return proposal.map(found -> placed(found.shown(), (one, place) -> cells(one, place, found.better())))
                .orElseGet(() -> placed(line.waiting(), SequenceTable::cells));
    }

    private static <A, B> List<B> placed(List<A> all, BiFunction<A, Integer, B> drawn) {
        return IntStream.range(0, all.size())
                .mapToObj(at -> drawn.apply(all.get(at), at + 1))
                .toList();
    }

    private static Row row(OnHand one, int place) {
        return new Row(
                place,
                one.order(),
                one.kind(),
                Proposal.here(one),
                UNKNOWN,
                unbroken(Formats.date(one.promisedOn())),
                UNKNOWN,
                UNKNOWN,
                false,
                false,
                UNKNOWN,
                UNKNOWN);
    }

    private Row row(Proposal.Place one, int place) {
        return new Row(
                place,
                one.order(),
                one.kind(),
                one.here(),
                against(one.today() - place, one.today()),
                unbroken(Formats.date(one.promisedOn())),
                OddsInWords.of(one.oddsBefore()),
                OddsInWords.of(one.oddsAfter()),
                one.gains(),
                one.loses(),
                time(one.medianBefore()),
                time(one.medianAfter()));
    }

    private static String against(int earlier, int today) {
        return earlier == 0
                ? Words.of("line.sequenceSame")
                : Words.of(earlier > 0 ? "line.sequenceEarlier" : "line.sequenceLater", today, Math.abs(earlier));
    }

    private String time(Optional<Instant> known) {
        return known.map(when -> unbroken(formats.day(when)) + " " + formats.clock(when))
                .orElseGet(() -> Words.of(
                        "line.forecastBeyond", formats.day(line.calendar().end())));
    }

    private static String unbroken(String day) {
        return day.replace(' ', NO_BREAK);
    }

    private static List<String> cells(OnHand one, int place) {
        return List.of(
                String.valueOf(place),
                String.valueOf(place),
                one.order(),
                one.kind(),
                yes(Proposal.here(one)),
                one.promisedOn().toString(),
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN);
    }

    private static List<String> cells(Proposal.Place one, int place, boolean better) {
        return List.of(
                String.valueOf(place),
                String.valueOf(one.today()),
                one.order(),
                one.kind(),
                yes(one.here()),
                one.promisedOn().toString(),
                share(one.oddsBefore()),
                share(better ? one.oddsAfter() : one.oddsBefore()),
                iso(one.medianBefore()),
                iso(better ? one.medianAfter() : one.medianBefore()));
    }

    private static String yes(boolean here) {
        return here ? "yes" : "no";
    }

    private static String share(double odds) {
        return String.format(Locale.ROOT, "%.4f", odds);
    }

    private static String iso(Optional<Instant> at) {
        return at.map(Instant::toString).orElse(UNKNOWN);
    }
}
