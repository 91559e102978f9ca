package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.ledger.Entry;
import wainbook.order.WorkOrder.Phase;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.crew.Whereabouts;
import wainbook.rehearsal.scenario.Line;
import wainbook.rehearsal.scenario.Scene;
import wainbook.rehearsal.vehicle.PackStore;
import wainbook.rehearsal.vehicle.StageWork;
import wainbook.works.Role;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.Register;

/** What happens beside the line: the pack store, other permits, the bay, and vehicles that wait for papers. */
final class BesideTheLine {

    private final Playing playing;

    BesideTheLine(Playing playing) {
        this.playing = playing;
    }

    /** Hot work where a vehicle is held, a lift where one waits for its gate: nobody is at work on either. */
    void safety(Scene scene) {
        playing.together(() -> {
            Whereabouts.At safe = playing.at("safety");
            var safety = new SafetyScene(
                    playing.acts, playing.crew(safe), playing.tools(safe), playing.scenario.seed(), playing.present);
            safety.works();
            found(scene, Scene.Found.HELD).ifPresent(entry -> safety.hotWork(playing.number(entry), last(entry)));
            found(scene, Scene.Found.UNSIGNED).ifPresent(entry -> safety.lifted(playing.number(entry), last(entry)));
        });
    }

    /** For two donors that are accepted. */
    void parts() {
        playing.together(() -> {
            var parts = new PartsScene(playing);
            parts.came(1);
            parts.awaited(2);
        });
    }

    private static Optional<Integer> found(Scene scene, Scene.Found found) {
        return scene.members().stream()
                .filter(member -> member.found() == found)
                .map(Scene.Member::entry)
                .findFirst();
    }

    /** The packs that the works keeps, and those in storage. */
    void packs() {
        playing.together(() -> {
            Whereabouts.At here = playing.at("pack store");
            var store = new PackStore(playing.acts, playing.crew(here), playing.tools(here));
            store.keep(playing.acts.clock.instant());
            sizes();
            store.stock(playing.present);
        });
    }

    /** What is printed on the gloves. */
    private void sizes() {
        Dice dice = Dice.of(0, "gloves");
        String engineer = playing.crew(playing.at("office")).anyone(Role.WORKS_ENGINEER, dice);
        for (InstrumentRow pair : InstrumentRow.ofKind("gloves")) {
            playing.acts.register.describe(
                    new Register.ToDescribe(
                            dice.id(),
                            pair.code,
                            Optional.of(String.valueOf(dice.between(9, 11))),
                            Optional.of("Class 0"),
                            Optional.empty()),
                    Actor.of(engineer, playing.acts.clock));
        }
    }

    /** What has left the line and is not handed over: one vehicle in the bay, the others waiting for their papers. */
    void vehicles() {
        int steps = playing.steps();
        var waste = new WasteScene(playing, 1);
        waste.begun(Duration.ofDays(12));
        for (int late = Playing.WAITING_FOR_PAPERS - 1; late >= 0; late--) {
            int entry = -steps - late;
            double share = 0.3 * (late + 1);
            playing.whole(entry, () -> {
                playing.finished(entry, leg -> stripped(waste, leg, playing.number(entry)));
                playing.papers(entry, share);
                if (entry == -steps - Playing.WAITING_FOR_PAPERS + 1) {
                    playing.leg(entry, "issued", way -> way.issued(), order -> order.phase() == Phase.FINISHED);
                }
            });
        }
        waste.leaving().collected(Duration.ofHours(30), true);
        waste.leaving().returned(Duration.ofHours(2));
        int entry = -steps - Playing.WAITING_FOR_PAPERS;
        playing.whole(entry, () -> inTheBay(entry));
    }

    private static void stripped(WasteScene waste, Line.Leg leg, String order) {
        if (leg.stage().equals(WasteScene.STAGE)) {
            waste.placed(order, false);
        }
    }

    private void inTheBay(int entry) {
        playing.ordered(entry);
        playing.surveyed(entry, 1);
        List<Line.Leg> legs = playing.line(playing.kind(entry)).legs();
        Line.Leg stays = legs.get(legs.size() / 2);
        legs.stream().filter(leg -> leg.step() < stays.step()).forEach(leg -> playing.through(entry, leg, false));
        playing.leg(
                entry,
                stays.stage(),
                way -> {
                    playing.onto(way, entry, stays);
                    StageWork work = way.work(stays.stage(), stays.step(), playing.pace(entry, stays));
                    work.upTo(0.4);
                    work.events().report(Optional.empty(), "Coolant found below the floor, leak not located yet");
                    work.makeSafe();
                    playing.acts.releases.stations().stream()
                            .filter(station ->
                                    station.stage().isEmpty() && !station.code().equals("YARD"))
                            .findFirst()
                            .ifPresent(bay -> way.aside(bay.code(), "Leak to be located without holding up the line"));
                },
                order -> Playing.isBefore(order, stays));
    }

    private Instant last(int entry) {
        List<Entry> entries = playing.history(entry).entries();
        return entries.get(entries.size() - 1).moment().at();
    }
}
