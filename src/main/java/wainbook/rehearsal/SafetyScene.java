package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Permitting;
import wainbook.permit.Precaution;
import wainbook.permit.Step;
import wainbook.permit.Trait;
import wainbook.permit.Work;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.crew.Crew;
import wainbook.rehearsal.crew.ToolStore;
import wainbook.rehearsal.vehicle.AtVehicle;
import wainbook.safety.Nameless;
import wainbook.safety.SafetySaying.NearMissReported;
import wainbook.safety.SafetySaying.VisitorInducted;
import wainbook.safety.miss.Handling;
import wainbook.safety.miss.NearMisses;
import wainbook.safety.miss.Reporting;
import wainbook.safety.visit.Visiting;
import wainbook.works.Role;

/** Permits, near misses and a visitor as a demonstration finds them. Its dice are its own: nothing else falls otherwise. */
final class SafetyScene {

    private final Acts acts;
    private final Crew crew;
    private final ToolStore tools;
    private final Dice dice;
    private final Instant present;

    SafetyScene(Acts acts, Crew crew, ToolStore tools, long seed, Instant present) {
        this.acts = acts;
        this.crew = crew;
        this.tools = tools;
        this.dice = Dice.of(seed, "safety");
        this.present = present;
    }

    /** What lies in the stream of the works, in the order in which it happened. */
    void works() {
        if (!NearMisses.of(acts.ledger.history(Subject.works())).all().isEmpty()) {
            return;
        }
        closedNearMiss();
        nearMissInHand();
        String visitor = inducted();
        int permit = contractor();
        done(acts.visiting.enter(
                new Visiting.ToEnter(dice.id(), visitor, "Roof over line 1", Optional.of("_works/" + permit)),
                host(38)));
        done(acts.nearMisses.report(
                new Reporting.ToReport(
                        dice.id(),
                        Optional.empty(),
                        Optional.of("ST-2"),
                        Optional.of("Stepped back from the bracket and the walkway gate was open behind me")),
                Nameless.of(host(15))));
    }

    private void closedNearMiss() {
        int number =
                reported(Duration.ofDays(6), "ST-3", "A shackle lay on the cradle when the motor was lifted over it");
        LocalDate due = acts.day.of(before(Duration.ofDays(3)));
        done(acts.handling.lookAt(
                new Handling.ToLookAt(dice.id(), number, crew.anyone(Role.TEAM_LEADER, dice), due),
                as(Role.WORKS_ENGINEER, Duration.ofDays(5))));
        done(acts.handling.close(
                new Handling.ToClose(
                        dice.id(), number, "Shadow board for shackles at the hoist; cradle swept before each lift"),
                as(Role.WORKS_ENGINEER, Duration.ofDays(4))));
    }

    private void nearMissInHand() {
        int number =
                reported(Duration.ofDays(2), "ST-4A", "Spreader beam swung against the platform, nobody stood there");
        LocalDate due = acts.day.of(present).plusDays(4);
        done(acts.handling.lookAt(
                new Handling.ToLookAt(dice.id(), number, crew.anyone(Role.TEAM_LEADER, dice), due),
                as(Role.LINE_MANAGER, Duration.ofDays(1))));
    }

    private int reported(Duration ago, String station, String words) {
        Entry entry = done(acts.nearMisses.report(
                new Reporting.ToReport(dice.id(), Optional.empty(), Optional.of(station), Optional.of(words)),
                as(Role.TECHNICIAN, ago)));
        return ((NearMissReported) entry.saying()).nearMiss();
    }

    private String inducted() {
        Entry entry = done(acts.visiting.induct(
                new Visiting.ToInduct(
                        dice.id(),
                        Optional.empty(),
                        "Maren Tveit",
                        "Rooflight fitters",
                        acts.day.of(present).plusMonths(6)),
                host(50)));
        return ((VisitorInducted) entry.saying()).visitor();
    }

    private int contractor() {
        Actor issuer = as(Role.WORKS_ENGINEER, Duration.ofMinutes(46));
        String receiver = crew.anyone(Role.TEAM_LEADER, dice);
        String host = AtVehicle.needed(crew.authorised(1, present, dice, receiver, issuer.who()), "a host");
        int permit = issued(
                issuer,
                Subject.works(),
                Work.CONTRACTOR,
                Optional.of("Roof over line 1"),
                "Renew two roof lights, from outside",
                List.of(new Ticked(Precaution.INDUCTION, Optional.empty()), tick(Precaution.HOST, host)),
                receiver);
        take(Subject.works(), permit, Step.RECEIVE, at(receiver, before(Duration.ofMinutes(44))), Optional.empty());
        return permit;
    }

    /** Hot work that is over on this vehicle: somebody watches for fire. Left out where its last entry is too near. */
    void hotWork(String order, Instant last) {
        Instant issued = later(last, before(Duration.ofMinutes(52)));
        Instant over = later(issued.plus(Duration.ofMinutes(12)), before(Duration.ofMinutes(20)));
        if (over.isAfter(present)) {
            return;
        }
        Subject vehicle = Subject.workOrder(order);
        String receiver = AtVehicle.needed(crew.worker(0, Optional.of("WELDING"), issued, dice), "somebody who welds");
        String watch = AtVehicle.needed(crew.authorised(1, issued, dice, receiver), "a fire watch");
        Optional<String> detector = tools.fit("gas-detector", List.of(), issued, 0);
        var precautions = new ArrayList<>(List.of(
                new Ticked(Precaution.DRAINED, Optional.empty()),
                new Ticked(Precaution.GAS_FREE, detector),
                new Ticked(Precaution.EXTINGUISHER, Optional.empty()),
                tick(Precaution.FIRE_WATCH, watch)));
        int permit = issued(
                at(leader(receiver), issued),
                vehicle,
                Work.HOT_WORK,
                Optional.empty(),
                "Cut the seized stud of the old engine mount, and dress it",
                precautions,
                receiver);
        take(vehicle, permit, Step.RECEIVE, at(receiver, issued.plusSeconds(180)), Optional.empty());
        take(vehicle, permit, Step.HAND_BACK, at(receiver, over), Optional.empty());
    }

    /** A lift that is over and closed. */
    void lifted(String order, Instant last) {
        Instant issued = later(last, before(Duration.ofMinutes(60)));
        if (issued.plus(Duration.ofMinutes(25)).isAfter(present)) {
            return;
        }
        Subject vehicle = Subject.workOrder(order);
        String receiver = AtVehicle.needed(crew.worker(0, Optional.of("LIFTING"), issued, dice), "somebody who lifts");
        String gear = AtVehicle.needed(tools.fit("lifting-gear", List.of(), issued, 0), "lifting gear");
        String issuer = leader(receiver);
        int permit = issued(
                at(issuer, issued),
                vehicle,
                Work.LIFTING,
                Optional.empty(),
                "Lift the distribution unit back out for its cracked foot, and in again",
                List.of(
                        tick(Precaution.LIFTING_GEAR, gear),
                        new Ticked(Precaution.NOBODY_BENEATH, Optional.empty()),
                        tick(
                                Precaution.LIFTING_PLAN,
                                "95 kg on two legs, straight up and over the left rail; hoist signals")),
                receiver);
        take(vehicle, permit, Step.RECEIVE, at(receiver, issued.plusSeconds(120)), Optional.empty());
        take(vehicle, permit, Step.HAND_BACK, at(receiver, issued.plus(Duration.ofMinutes(20))), Optional.empty());
        take(vehicle, permit, Step.CLOSE, at(issuer, issued.plus(Duration.ofMinutes(24))), Optional.empty());
    }

    private int issued(
            Actor issuer,
            Subject stream,
            Work sort,
            Optional<String> place,
            String work,
            List<Ticked> precautions,
            String receiver) {
        Instant now = issuer.clock().instant();
        Instant until = acts.day.shiftEnd(now).orElseGet(() -> acts.day.endOf(acts.day.of(now)));
        Entry entry = done(acts.permitting.issue(
                new Permitting.ToIssue(
                        dice.id(), stream, sort, place, work, List.<Trait>of(), precautions, receiver, until),
                issuer));
        return ((PermitIssued) entry.saying()).permit();
    }

    private void take(Subject stream, int permit, Step step, Actor actor, Optional<String> words) {
        UUID id = dice.id();
        done(acts.permitting.take(new Permitting.ToTake(id, stream, permit, step, words), actor));
    }

    private static Ticked tick(Precaution precaution, String naming) {
        return new Ticked(precaution, Optional.of(naming));
    }

    /** Who issues a permit to somebody is not that person. */
    private String leader(String receiver) {
        String leader = crew.anyone(Role.TEAM_LEADER, dice);
        return leader.equals(receiver) ? crew.anyone(Role.WORKS_ENGINEER, dice) : leader;
    }

    private Actor host(int minutesAgo) {
        Instant at = before(Duration.ofMinutes(minutesAgo));
        return at(AtVehicle.needed(crew.authorised(1, at, dice), "a host"), at);
    }

    private Actor as(Role role, Duration ago) {
        return at(crew.anyone(role, dice), before(ago));
    }

    private static Actor at(String person, Instant time) {
        return Actor.of(person, Clock.fixed(time, ZoneOffset.UTC));
    }

    private Instant before(Duration ago) {
        return present.minus(ago);
    }

    private static Instant later(Instant one, Instant other) {
        return one.plusSeconds(60).isAfter(other) ? one.plusSeconds(60) : other;
    }

    private static <T> T done(Outcome<T> outcome) {
        return outcome.fold(entry -> entry, reasons -> {
            throw new IllegalStateException("the safety scene is refused: " + reasons);
        });
    }
}
