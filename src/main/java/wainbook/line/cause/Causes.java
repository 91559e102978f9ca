package wainbook.line.cause;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.gate.Gate;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.station.Situation;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.station.help.HelpCall;

/**
 * Why a vehicle or a station stands as it does, in sentences with links.
 *
 * @param titles of stations by their codes
 */
public record Causes(
        Function<String, Optional<Waits>> waitsFor,
        Function<String, Optional<Situation>> at,
        Function<String, String> titles,
        Clock clock) {

    /** How times are written, and what time it is. */
    public record Clock(Formats formats, Instant now) {
        LocalDate today() {
            return LocalDate.ofInstant(now, formats.zone());
        }

        String when(Instant at) {
            boolean today = formats.day(at).equals(formats.day(now));
            return today ? formats.clock(at) : formats.day(at) + " " + formats.clock(at);
        }
    }

    public List<Cause> of(Situation here) {
        String vehicle = "/orders/" + here.order().number();
        var causes = new ArrayList<Cause>();
        here.calls().forEach(call -> causes.add(help(here, call)));
        here.holds()
                .forEach(hold -> causes.add(Cause.at(
                        vehicle + "#holds", Words.of("line.causeHeld", hold.hold(), hold.stops(), hold.reason()))));
        here.heldByRule()
                .forEach(hold -> causes.add(Cause.at(
                        hold.path(),
                        Words.of("line.causeHeldByRule", hold.title(), hold.stopsInWords(), hold.reason()))));
        here.nonconformities()
                .forEach(open -> causes.add(Cause.at(
                        vehicle + "#matters",
                        Words.of(
                                "line.causeNonconformity",
                                open.number(),
                                open.opened().what()))));
        AwaitedParts.of(here.history())
                .openAt(here.order().stage())
                .forEach(part ->
                        causes.add(Cause.at(AwaitedPart.path(here.order().number()), part.sentence(clock.today()))));
        here.gate().ifPresent(gate -> causes.add(work(here, gate)));
        return causes;
    }

    private Cause help(Situation here, HelpCall call) {
        String words = call.said().words().map(text -> ": " + text).orElse("");
        return Cause.at(
                HelpCall.path(here.order().number(), call.number()),
                Words.of(
                        call.answered().isPresent() ? "line.causeHelpComes" : "line.causeHelp",
                        call.called(),
                        clock.when(call.since()),
                        words));
    }

    private Cause work(Situation here, Gate gate) {
        String order = here.order().number();
        String gatePath = "/gates/" + order + "/" + gate.record().stage();
        int open = gate.record().unsettled().size();
        return switch (gate.standing()) {
            case SIGNED -> signed(here);
            case REFUSED -> Cause.at(gatePath, Words.of("line.causeRefused"));
            case CHANGED_SINCE_SIGNED -> Cause.at(gatePath, Words.of("line.causeChanged"));
            case UNSIGNED ->
                open == 0
                        ? Cause.at(gatePath, Words.of("line.causeReadySince", clock.when(here.since())))
                        : Cause.at(
                                "/station/" + order,
                                Words.of(
                                        "line.causeOpen",
                                        open,
                                        gate.record().items().size()));
        };
    }

    private Cause signed(Situation here) {
        String vehicle = "/orders/" + here.order().number();
        return waitsFor.apply(here.station())
                .map(waits -> at.apply(waits.station())
                        .map(other -> Cause.at(
                                "/orders/" + other.order().number(),
                                Words.of(
                                        "line.causeBlocked",
                                        titles.apply(waits.station()),
                                        other.order().number(),
                                        since(other, waits))))
                        .orElseGet(() -> stands("line.causeBlockedEmpty", waits)))
                .orElseGet(() -> Cause.at(vehicle + "/move", Words.of("line.causeSigned")));
    }

    /** Why nothing stands at a station; {@code none} where nothing is on its way either. */
    public Cause starved(String station, Cause none) {
        return waitsFor.apply(station)
                .map(waits -> at.apply(waits.station())
                        .map(other -> Cause.at(
                                "/orders/" + other.order().number(),
                                Words.of(
                                        "line.starvedWaits",
                                        other.order().number(),
                                        titles.apply(waits.station()),
                                        since(other, waits))))
                        .orElseGet(() -> stands("line.starvedEmpty", waits)))
                .orElse(none);
    }

    /** A station without a vehicle that nothing can come to or from. */
    private Cause stands(String words, Waits waits) {
        return Cause.of(
                Words.of(words, titles.apply(waits.station()), waits.state().word()));
    }

    /** What is longer than it may be began before it was too long: then it is said since when the vehicle is there. */
    private String since(Situation other, Waits waits) {
        return switch (waits.state()) {
            case OFF_SHIFT -> waits.state().word();
            case WORKING, OVER_TAKT -> Words.of("line.thereSince", waits.state().word(), clock.when(other.since()));
            case HELD, AWAITING_SIGN_OFF, BLOCKED, STARVED, DOWN ->
                Words.of("line.stateSince", waits.state().word(), clock.when(other.since()));
        };
    }
}
