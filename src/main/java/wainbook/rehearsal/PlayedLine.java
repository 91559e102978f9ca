package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.rehearsal.scenario.Line;
import wainbook.rehearsal.scenario.Scene;
import wainbook.rehearsal.time.Timetable;
import wainbook.rehearsal.vehicle.Events;
import wainbook.rehearsal.vehicle.Legs;
import wainbook.rehearsal.vehicle.StageWork;

/** The line's work: every vehicle on it as far as it has come, and what waits before it. */
final class PlayedLine {

    private static final Duration COLLECTED_BEFORE = Duration.ofMinutes(40);

    private final Playing playing;
    private final BesideTheLine beside;
    private final WasteScene waste;

    PlayedLine(Playing playing, BesideTheLine beside) {
        this.playing = playing;
        this.beside = beside;
        this.waste = new WasteScene(playing, WasteScene.ON_THE_LINE);
    }

    /** The line, and what waits before it. */
    void play() {
        int steps = playing.steps();
        beside.packs();
        Scene scene = Scene.of(steps);
        scene.members().forEach(member -> onTheLine(scene, member));
        waste.leaving().collected(COLLECTED_BEFORE, false);
        for (int entry = 0; entry <= 2; entry++) {
            playing.ordered(entry);
            playing.surveyed(entry, 1);
        }
        playing.ordered(3);
        playing.surveyed(3, 0.5);
        for (int entry = 4; entry <= Playing.ORDERED_AHEAD; entry++) {
            playing.ordered(entry);
        }
        beside.safety(scene);
        beside.parts();
    }

    private void onTheLine(Scene scene, Scene.Member member) {
        int entry = member.entry();
        playing.ordered(entry);
        playing.surveyed(entry, 1);
        for (Line.Leg leg : playing.line(playing.kind(entry)).legs()) {
            boolean stays = leg.step() <= member.step()
                    && member.step() < leg.step() + leg.stations().size();
            if (leg.step() < member.step() && !stays) {
                playing.through(entry, leg, false);
                if (leg.stage().equals(WasteScene.STAGE)) {
                    waste.placed(
                            playing.number(entry), member.equals(scene.members().get(0)));
                }
            } else if (stays) {
                playing.leg(entry, leg.stage(), way -> found(way, member, leg), order -> Playing.isBefore(order, leg));
            }
        }
    }

    private void found(Legs way, Scene.Member member, Line.Leg leg) {
        playing.onto(way, member.entry(), leg);
        StageWork work = way.work(leg.stage(), leg.step(), pace(member, leg));
        if (member.found() == Scene.Found.UNSIGNED) {
            work.readsAlikeOnce();
        }
        if (member.share() < 1) {
            work.upTo(member.share(), playing.present);
        } else {
            work.upTo(member.share());
        }
        switch (member.found()) {
            case SIGNED -> way.sign(leg.stage());
            case STUCK ->
                work.events().report(Optional.empty(), "Connector housing cracked, replacement not in the works");
            case HELD -> work.events().hold(HoldKind.PARTS, Events.NO_COUPLING);
            case CALLING -> {
                work.events().leaveSomething();
                work.events().call();
            }
            case WORKING, UNSIGNED -> {}
        }
    }

    private static boolean atWork(Scene.Member member) {
        return member.found() == Scene.Found.WORKING || member.found() == Scene.Found.CALLING;
    }

    /** So that the last entry of somebody at work is a few minutes old. */
    private double pace(Scene.Member member, Line.Leg leg) {
        double usual = playing.pace(member.entry(), leg);
        if (!atWork(member)) {
            return usual;
        }
        Instant came = playing.times.start(member.entry() + leg.step());
        double minutes = Duration.between(came, playing.present).toMinutes() - 4;
        double whole = leg.stations().size() * Timetable.TAKT.toMinutes();
        return usual * Math.min(1.6, minutes / (whole * member.share()));
    }
}
