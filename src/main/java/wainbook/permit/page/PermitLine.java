package wainbook.permit.page;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Subject;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.permit.Permit;
import wainbook.permit.State;
import wainbook.permit.Where;

/** A permit as lists and its own page show it. */
public record PermitLine(Permit permit, Instant now, Formats formats) {

    /** {@code vehicle/number}. */
    public String key() {
        return Where.word(permit.subject()) + "/" + permit.number();
    }

    public String path() {
        return "/permits/" + key();
    }

    public boolean onVehicle() {
        return !permit.subject().equals(Subject.works());
    }

    /** The vehicle's number, or the place. */
    public String where() {
        return onVehicle() ? permit.subject().code() : permit.said().place().orElse("–");
    }

    public String sort() {
        return Words.of("permit.sort." + permit.said().sort().name());
    }

    public State state() {
        return permit.state(now);
    }

    public String stateWord() {
        return Words.of("permit.state." + state().name());
    }

    public String meaning() {
        return switch (state()) {
            case WAITS_FOR_RECEIVER -> "quiet";
            case IN_FORCE -> "safe";
            case RUN_OUT, STOPPED -> "danger";
            case HANDED_BACK -> "warn";
            case ENDED_BY_MOVE -> permit.open() ? "warn" : "quiet";
            case CLOSED -> "quiet";
        };
    }

    public String sign() {
        return switch (state()) {
            case WAITS_FOR_RECEIVER -> "signature";
            case IN_FORCE -> "working";
            case RUN_OUT -> "clock";
            case STOPPED -> "stop";
            case HANDED_BACK -> "clock";
            case ENDED_BY_MOVE -> "go";
            case CLOSED -> "done";
        };
    }

    /** What it waits for, in words. */
    public String waitsFor() {
        if (!permit.open()) {
            return Words.of("permit.waitsForNothing");
        }
        Optional<Instant> watch = permit.lastLookFrom();
        if (watch.isPresent()) {
            return now.isBefore(watch.get())
                    ? Words.of("permit.waitsForFireWatch", formats.clock(watch.get()))
                    : Words.of("permit.waitsForLastLook");
        }
        return switch (state()) {
            case WAITS_FOR_RECEIVER -> Words.of("permit.waitsForReceiver");
            case IN_FORCE ->
                Words.of("permit.waitsForWork", formats.clock(permit.said().validUntil()));
            case RUN_OUT, STOPPED ->
                Words.of(permit.received().isPresent() ? "permit.waitsForHandBack" : "permit.waitsForClosing");
            case HANDED_BACK, ENDED_BY_MOVE, CLOSED -> Words.of("permit.waitsForClosing");
        };
    }

    /** As the pages of vehicle and station name it. */
    public String inShort() {
        return state() == State.IN_FORCE || state() == State.WAITS_FOR_RECEIVER
                ? Words.of(
                        "permit.openOneUntil",
                        sort(),
                        permit.number(),
                        formats.clock(permit.said().validUntil()))
                : Words.of("permit.openOne", sort(), permit.number()) + ", " + stateWord();
    }

    List<String> cells() {
        return List.of(
                Where.word(permit.subject()),
                String.valueOf(permit.number()),
                permit.said().place().orElse(""),
                permit.said().sort().name(),
                permit.said().work(),
                state().name(),
                waitsFor(),
                permit.issuer(),
                permit.said().receiver(),
                permit.issued().moment().at().toString(),
                permit.said().validUntil().toString());
    }
}
