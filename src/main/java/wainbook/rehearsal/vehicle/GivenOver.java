package wainbook.rehearsal.vehicle;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.handover.record.Receipt;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordRules;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.act.Condition;
import wainbook.handover.record.act.Instructing;
import wainbook.handover.record.act.Receipting;
import wainbook.handover.record.act.Snagging;
import wainbook.handover.record.act.WarrantyStart;
import wainbook.rehearsal.scenario.Evidence;
import wainbook.setup.DemoWorks;
import wainbook.works.Role;

/** A vehicle is given to its operator at the handover bay: its record, and the receipt. */
record GivenOver(AtVehicle at) {

    private static final List<String> DRIVERS = List.of("Robin Invented", "Alex Sample", "Jo Example", "Sam Fiction");
    private static final List<String> FITTERS = List.of("Chris Placeholder", "Kim Specimen", "Lee Madeup");
    private static final List<String> RECEIVERS = List.of("Pat Notreal", "Max Stand-In", "Kit Pretend");

    void recorded() {
        String clerk = at.crew.anyone(Role.HANDOVER_CLERK, at.dice);
        condition(clerk);
        at.done(
                at.acts.condition.list(
                        new Condition.ToList(
                                at.dice.id(),
                                at.order,
                                at.acts.handoverRecords.wordlists().things().stream()
                                        .map(thing -> new Thing(thing, thing.contains("keys") ? 2 : 1))
                                        .toList(),
                                false),
                        at.inOffice(clerk)),
                "things given");
        snagged(clerk);
        instructed(clerk);
        at.done(
                at.acts.warrantyStart.begin(
                        new WarrantyStart.ToBegin(
                                at.dice.id(),
                                at.order,
                                today(),
                                knownKm(),
                                "Conversion and its parts for 24 months or 150 000 km, packs for 72 months or down to 80 % of "
                                        + "their energy, whichever comes first. Wear and accident not."),
                        at.inOffice(clerk)),
                "warranty");
    }

    private void condition(String clerk) {
        at.pass(at.dice.between(0.3, 0.8));
        at.done(
                at.acts.condition.read(
                        new Condition.ToRead(
                                at.dice.id(),
                                at.order,
                                knownKm() + at.dice.between(0, 3),
                                at.dice.between(71, 98),
                                "Handover bay"),
                        at.inOffice(clerk)),
                "state at handover");
        String photograph = new Evidence(at.acts.files).of("image/jpeg");
        for (String place : List.of("Nearside", "Charging inlet")) {
            at.done(
                    at.acts.condition.picture(
                            new Condition.ToPicture(at.dice.id(), at.order, place, "As given over", photograph),
                            at.inOffice(clerk)),
                    "photograph");
        }
    }

    /** Every second vehicle has a snag. */
    private void snagged(String clerk) {
        if (at.dice.between(0, 1) == 0) {
            return;
        }
        at.done(
                at.acts.snagging.agree(
                        new Snagging.ToAgree(
                                at.dice.id(),
                                at.order,
                                "Scratch in the paint, a hand long",
                                "Offside, below the cab door",
                                at.dice.one(RECEIVERS),
                                Optional.of(at.crew.anyone(Role.TEAM_LEADER, at.dice)),
                                "Touch up at the first service",
                                today().plusDays(at.dice.between(20, 60))),
                        at.inOffice(clerk)),
                "snag");
    }

    private void instructed(String clerk) {
        at.pass(at.dice.between(0.5, 1.0));
        at.done(
                at.acts.instructing.instruct(
                        new Instructing.ToInstruct(
                                at.dice.id(),
                                at.order,
                                List.of(at.dice.one(DRIVERS)),
                                List.of(at.dice.one(FITTERS)),
                                at.crew.anyone(Role.TEAM_LEADER, at.dice),
                                at.acts.handoverRecords.wordlists().topics(),
                                today()),
                        at.inOffice(clerk)),
                "instruction");
    }

    /** Mostly drawn, sometimes typed; now and then the receiver is not there. */
    String receipted() {
        String clerk = at.crew.anyone(Role.HANDOVER_CLERK, at.dice);
        String content = rules().shown().fingerprint();
        int how = at.dice.between(0, 9);
        at.pass(at.dice.between(0.3, 0.8));
        if (how == 0) {
            missed(clerk, content);
        } else {
            signed(clerk, content, how == 1);
        }
        return rules().counting().map(Receipt::inWords).orElseThrow();
    }

    private void signed(String clerk, String content, boolean typed) {
        at.done(
                at.acts.receipting.sign(
                        new Receipting.ToSign(
                                at.dice.id(),
                                at.order,
                                content,
                                at.dice.one(RECEIVERS),
                                "Depot foreman",
                                at.vehicle().ordered().operator(),
                                typed ? Manner.TYPED : Manner.DRAWN,
                                typed ? "" : scrawl(at.dice.between(3, 6)),
                                typed),
                        at.inOffice(clerk)),
                "receipt");
    }

    private void missed(String clerk, String content) {
        at.done(
                at.acts.receipting.miss(
                        new Receipting.ToMiss(
                                at.dice.id(),
                                at.order,
                                content,
                                Absence.NOT_PRESENT,
                                "The operator’s driver fetched it before the depot opened",
                                at.crew.anyone(Role.LINE_MANAGER, at.dice),
                                DemoWorks.PASSWORD),
                        at.inOffice(clerk)),
                "receipt missing");
    }

    /** A wave of so many loops across the field: nobody's signature. */
    private static String scrawl(int loops) {
        return IntStream.rangeClosed(0, 80)
                .mapToObj(i -> "[" + (120 + i * 9) + ","
                        + Math.round(150 + 70 * Math.sin(i * loops / 12.0) * (1 - i / 110.0)) + "]")
                .collect(Collectors.joining(",", "[[", "]]"));
    }

    private RecordRules rules() {
        return at.acts.handoverRecords.at(at.history(), at.now()).orElseThrow();
    }

    private int knownKm() {
        return RecordLook.odometerKm(at.history(), at.vehicle());
    }

    private LocalDate today() {
        return at.acts.handoverRecords.today(at.now());
    }
}
