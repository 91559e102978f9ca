package wainbook.line.forecast.whatif;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.line.forecast.state.TheLineNow;

/**
 * What is asked of the forecast; several changes at once are made together. Nothing of it is written anywhere.
 *
 * @param finishedBy until the end of which day finished vehicles are counted; a week ahead if it is not said
 */
public record WhatIf(
        Optional<Overtime> overtime,
        Optional<Hands> hands,
        Optional<String> secondStation,
        Optional<Turn> turn,
        Optional<Release> release,
        Optional<LocalDate> finishedBy) {

    /**
     * More working time after the last shift of some days.
     *
     * @param minutes from 1 to {@link #MOST_MINUTES}
     * @param stage empty for the whole line
     */
    public record Overtime(List<LocalDate> days, int minutes, Optional<String> stage) {

        public static final int MOST_MINUTES = 480;
        public static final int MOST_DAYS = 31;

        public Overtime {
            days = List.copyOf(days);
        }
    }

    /**
     * One more person at a stage.
     *
     * @param factor of the minutes of work; from {@link #LEAST} to 1
     */
    public record Hands(String stage, BigDecimal factor) {

        public static final BigDecimal ASSUMED = new BigDecimal("0.8");
        public static final BigDecimal LEAST = new BigDecimal("0.3");
    }

    /** A vehicle in front of the line comes onto it earlier or later. */
    public record Turn(String order, Place place) {

        /** Where among those in front of the line. */
        public enum Place {
            FIRST,
            ONE_UP,
            ONE_DOWN
        }
    }

    /**
     * A hold ends.
     *
     * @param at now if it is not said
     */
    public record Release(String order, int hold, Optional<Instant> at) {}

    public static WhatIf nothing() {
        return new WhatIf(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public boolean asksNothing() {
        return Stream.of(overtime, hands, secondStation, turn, release).allMatch(Optional::isEmpty);
    }

    Line changed(TheLineNow now) {
        TheLineNow ordered = turn.map(wanted -> Turns.taken(now, wanted)).orElse(now);
        Line line = ordered.line();
        line = secondStation.map(new MoreHands(line)::station).orElse(line);
        line = hands.map(new MoreHands(line)::helped).orElse(line);
        line = overtime.map(new LongerDays(line, now.calendar())::worked).orElse(line);
        return release.map(new EarlierRelease(line, now)::released).orElse(line);
    }
}
