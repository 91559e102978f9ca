package wainbook.rehearsal;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.act.Actor;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Route;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.CheckSheet;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.chance.Odds;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.crew.Crew;
import wainbook.rehearsal.crew.ToolStore;
import wainbook.rehearsal.crew.Whereabouts;
import wainbook.rehearsal.scenario.Certificates;
import wainbook.rehearsal.scenario.Evidence;
import wainbook.rehearsal.scenario.Line;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.rehearsal.scenario.Scene;
import wainbook.rehearsal.time.Pace;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.rehearsal.time.Timetable;
import wainbook.rehearsal.vehicle.Answers;
import wainbook.rehearsal.vehicle.AtVehicle;
import wainbook.rehearsal.vehicle.PackStore;
import wainbook.rehearsal.vehicle.StageWork;
import wainbook.rehearsal.vehicle.VehicleWay;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.works.Role;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.Register;

/**
 * Plays vehicles by their slot of entry. A leg of a vehicle's way is one transaction and is played once: begun again, the
 * playing goes on where it was left.
 */
final class Playing {

    private static final int LEG_TIMEOUT_S = 120;
    private static final int SURVEYED_BEFORE = 3;
    private static final int ORDERED_BEFORE = 15;
    private static final int PAPERS_AFTER = 1;
    private static final int HANDED_OVER_AFTER = 5;
    private static final int SOME_PAPERS_FOLLOW = 6;

    private final Acts acts;
    private final Scenario scenario;
    private final Odds odds;
    private final Timetable times;
    private final Instant present;
    private final Map<String, String> operators;
    private final ZoneId zone;
    private final String numbers;
    private final Set<String> people;
    private final Whereabouts whereabouts = new Whereabouts();

    /** @param numbers what the numbers of the work orders begin with */
    Playing(Acts acts, WorksFiles works, Scenario scenario, Odds odds, Instant present, String numbers) {
        this.numbers = numbers;
        this.people = works.people().stream().map(Lines.Person::number).collect(Collectors.toSet());
        this.acts = acts;
        this.scenario = scenario;
        this.odds = odds;
        this.present = present;
        this.zone = ZoneId.of(works.works().zone());
        this.times = Timetable.of(
                works.works().shifts().stream().map(Lines.ShiftLine::shift).toList(), zone, present);
        this.operators = works.works().operators().stream()
                .collect(Collectors.toMap(Lines.Operator::code, Lines.Operator::title));
    }

    /** When the first of so many vehicles is ordered: before that, the works is set up. */
    static Instant beforeAll(Timetable times, int steps, int handedOver) {
        return times.start(-(steps + WAITING_FOR_PAPERS + handedOver) - ORDERED_BEFORE)
                .minus(Duration.ofDays(1));
    }

    /** The line, and what waits before it. */
    void line() {
        int steps = steps();
        packs();
        Scene.of(steps).members().forEach(this::onTheLine);
        for (int entry = 0; entry <= 2; entry++) {
            ordered(entry);
            surveyed(entry, 1);
        }
        ordered(3);
        surveyed(3, 0.5);
        for (int entry = 4; entry <= 8; entry++) {
            ordered(entry);
        }
        safety(Scene.of(steps));
    }

    /** Hot work where a vehicle is held, a lift where one waits for its gate: nobody is at work on either. */
    private void safety(Scene scene) {
        acts.ledger.together(LEG_TIMEOUT_S, () -> {
            Whereabouts.At safe = whereabouts.at("safety");
            var safety = new SafetyScene(
                    acts,
                    Crew.of(people, acts.ledger, acts.day, safe),
                    new ToolStore(acts.ledger, acts.day, safe),
                    scenario.seed(),
                    present);
            safety.works();
            found(scene, Scene.Found.HELD).ifPresent(entry -> safety.hotWork(number(entry), last(entry)));
            found(scene, Scene.Found.UNSIGNED).ifPresent(entry -> safety.lifted(number(entry), last(entry)));
            return true;
        });
    }

    private static Optional<Integer> found(Scene scene, Scene.Found found) {
        return scene.members().stream()
                .filter(member -> member.found() == found)
                .map(Scene.Member::entry)
                .findFirst();
    }

    private Instant last(int entry) {
        List<Entry> entries = history(entry).entries();
        return entries.get(entries.size() - 1).moment().at();
    }

    /** The packs that the works keeps, and those in storage. */
    private void packs() {
        acts.ledger.together(LEG_TIMEOUT_S, () -> {
            Whereabouts.At here = whereabouts.at("pack store");
            var store = new PackStore(
                    acts, Crew.of(people, acts.ledger, acts.day, here), new ToolStore(acts.ledger, acts.day, here));
            store.keep(acts.clock.instant());
            sizes();
            store.stock(present);
            return true;
        });
    }

    /** What is printed on the gloves. */
    private void sizes() {
        Dice dice = Dice.of(0, "gloves");
        String engineer =
                Crew.of(people, acts.ledger, acts.day, whereabouts.at("office")).anyone(Role.WORKS_ENGINEER, dice);
        for (InstrumentRow pair : InstrumentRow.ofKind("gloves")) {
            acts.register.describe(
                    new Register.ToDescribe(
                            dice.id(),
                            pair.code,
                            Optional.of(String.valueOf(dice.between(9, 11))),
                            Optional.of("Class 0"),
                            Optional.empty()),
                    Actor.of(engineer, acts.clock));
        }
    }

    /** Old certificates of tools, put on record on the day before the first vehicle. */
    void certificates(int handedOver) {
        Instant before = beforeAll(times, steps(), handedOver).plus(Duration.ofHours(1));
        acts.ledger.together(LEG_TIMEOUT_S, () -> {
            String engineer = Crew.of(people, acts.ledger, acts.day, whereabouts.at("office"))
                    .anyone(Role.QUALITY_ENGINEER, Dice.of(scenario.seed(), "certificates"));
            new Certificates(acts, scenario.certificates(), scenario.seed(), engineer)
                    .puttingOnRecord(Clock.fixed(before, ZoneOffset.UTC));
            return true;
        });
    }

    /** What has left the line and is not handed over: one vehicle in the bay, the others waiting for their papers. */
    void besideTheLine() {
        int steps = steps();
        for (int late = 0; late < WAITING_FOR_PAPERS; late++) {
            int entry = -steps - late;
            double share = 0.3 * (late + 1);
            whole(entry, () -> {
                finished(entry);
                papers(entry, share);
            });
        }
        int entry = -steps - WAITING_FOR_PAPERS;
        whole(entry, () -> inTheBay(entry));
    }

    /**
     * A whole way in one transaction: between two legs the vehicle would stand where people look at the line now. A vehicle
     * that is there already is left alone, since what becomes of it is up to the people who use the demonstration.
     */
    private void whole(int entry, Runnable way) {
        if (history(entry).isEmpty()) {
            acts.ledger.together(LEG_TIMEOUT_S, () -> {
                way.run();
                return true;
            });
        }
    }

    static final int WAITING_FOR_PAPERS = 3;

    /** A vehicle that was handed over; 1 is the latest. */
    void past(int number) {
        int entry = -steps() - WAITING_FOR_PAPERS - number;
        whole(entry, () -> {
            finished(entry);
            if (number <= SOME_PAPERS_FOLLOW) {
                leg(
                        entry,
                        "papers",
                        way -> way.neededDocuments(papersCome(entry)),
                        order -> order.phase() == Phase.FINISHED);
            } else {
                papers(entry, 1);
            }
            leg(entry, "handover", way -> way.handedOver(), order -> order.phase() == Phase.FINISHED);
        });
    }

    /** Every vehicle's way is of the same steps, or there would be no takt. */
    int steps() {
        return line(scenario.kinds().get(0)).steps();
    }

    void ordered(int entry) {
        if (!history(entry).isEmpty()) {
            return;
        }
        Dice dice = dice(entry, "promise");
        LocalDate promised = LocalDate.ofInstant(times.start(entry + steps() + HANDED_OVER_AFTER), zone)
                .plusDays(dice.between(0, 5));
        Instant when = times.start(entry - ORDERED_BEFORE).plus(Duration.ofMinutes(dice.between(1, 60)));
        acts.ledger.together(LEG_TIMEOUT_S, () -> {
            way(entry, "ordered").ordered(when, promised);
            return true;
        });
    }

    void surveyed(int entry, double share) {
        leg(
                entry,
                "survey",
                way -> way.surveyed(times.start(entry - SURVEYED_BEFORE), share),
                order -> order.phase() == Phase.ORDERED);
    }

    private void finished(int entry) {
        ordered(entry);
        surveyed(entry, 1);
        List<Line.Leg> legs = line(kind(entry)).legs();
        legs.forEach(leg -> through(entry, leg, leg.equals(legs.get(legs.size() - 1))));
    }

    void through(int entry, Line.Leg leg, boolean last) {
        leg(
                entry,
                leg.stage(),
                way -> {
                    onto(way, entry, leg);
                    way.work(leg.stage(), leg.step(), pace(entry, leg)).upTo(1);
                    way.sign(leg.stage());
                    if (last) {
                        way.out();
                    }
                },
                order -> isBefore(order, leg));
    }

    void onto(VehicleWay way, int entry, Line.Leg leg) {
        way.onto(
                times.start(entry + leg.step()),
                leg.station(entry),
                leg.step() == 0 ? Direction.ONTO_LINE : Direction.FORWARD);
    }

    private static boolean isBefore(WorkOrder order, Line.Leg leg) {
        return leg.step() == 0
                ? order.phase() == Phase.DONOR_ACCEPTED
                : order.phase() == Phase.ON_LINE
                        && order.stage()
                                .flatMap(order::stageAfter)
                                .filter(leg.stage()::equals)
                                .isPresent();
    }

    private void papers(int entry, double share) {
        leg(
                entry,
                "papers",
                way -> way.documents(papersCome(entry), share, present),
                order -> order.phase() == Phase.FINISHED);
    }

    private Instant papersCome(int entry) {
        return times.start(papersSlot(entry, steps()));
    }

    /** When the papers of a vehicle come in: never after the present slot for one that has left the line. */
    static int papersSlot(int entry, int steps) {
        return entry + steps - 1 + PAPERS_AFTER;
    }

    private void inTheBay(int entry) {
        ordered(entry);
        surveyed(entry, 1);
        List<Line.Leg> legs = line(kind(entry)).legs();
        Line.Leg stays = legs.get(legs.size() / 2);
        legs.stream().filter(leg -> leg.step() < stays.step()).forEach(leg -> through(entry, leg, false));
        leg(
                entry,
                stays.stage(),
                way -> {
                    onto(way, entry, stays);
                    StageWork work = way.work(stays.stage(), stays.step(), pace(entry, stays));
                    work.upTo(0.4);
                    work.events().report(Optional.empty(), "Coolant found below the floor, leak not located yet");
                    work.makeSafe();
                    acts.releases.stations().stream()
                            .filter(station ->
                                    station.stage().isEmpty() && !station.code().equals("YARD"))
                            .findFirst()
                            .ifPresent(bay -> way.aside(bay.code(), "Leak to be located without holding up the line"));
                },
                order -> isBefore(order, stays));
    }

    private void onTheLine(Scene.Member member) {
        int entry = member.entry();
        ordered(entry);
        surveyed(entry, 1);
        for (Line.Leg leg : line(kind(entry)).legs()) {
            boolean stays = leg.step() <= member.step()
                    && member.step() < leg.step() + leg.stations().size();
            if (leg.step() < member.step() && !stays) {
                through(entry, leg, false);
            } else if (stays) {
                leg(entry, leg.stage(), way -> found(way, member, leg), order -> isBefore(order, leg));
            }
        }
    }

    private void found(VehicleWay way, Scene.Member member, Line.Leg leg) {
        onto(way, member.entry(), leg);
        StageWork work = way.work(leg.stage(), leg.step(), pace(member, leg));
        if (member.found() == Scene.Found.UNSIGNED) {
            work.readsAlikeOnce();
        }
        if (member.share() < 1) {
            work.upTo(member.share(), present);
        } else {
            work.upTo(member.share());
        }
        switch (member.found()) {
            case SIGNED -> way.sign(leg.stage());
            case STUCK ->
                work.events().report(Optional.empty(), "Connector housing cracked, replacement not in the works");
            case HELD -> work.events().hold(HoldKind.PARTS, "Coupling not delivered, promised for this afternoon");
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
        double usual = pace(member.entry(), leg);
        if (!atWork(member)) {
            return usual;
        }
        Instant came = times.start(member.entry() + leg.step());
        double minutes = Duration.between(came, present).toMinutes() - 4;
        double whole = leg.stations().size() * Timetable.TAKT.toMinutes();
        return usual * Math.min(1.6, minutes / (whole * member.share()));
    }

    private double pace(int entry, Line.Leg leg) {
        Scenario.Kind kind = kind(entry);
        CheckSheet sheet = acts.releases
                .route(kind.route())
                .flatMap(route -> route.leg(leg.stage()))
                .map(Route.Leg::checkSheet)
                .flatMap(acts.releases::sheetInForce)
                .map(Released::sheet)
                .orElseThrow();
        Plan plan = acts.releases.plan(kind.variant()).orElseThrow();
        return Pace.of(sheet, plan, leg.stations().size());
    }

    private interface Part {
        void on(VehicleWay way);
    }

    private interface Due {
        boolean is(WorkOrder order);
    }

    private void leg(int entry, String name, Part part, Due due) {
        acts.ledger.together(LEG_TIMEOUT_S, () -> {
            if (WorkOrder.of(history(entry)).filter(due::is).isPresent()) {
                part.on(way(entry, name));
            }
            return true;
        });
    }

    VehicleWay way(int entry, String leg) {
        Dice dice = dice(entry, leg);
        History history = history(entry);
        var clock = new PlayedClock(
                history.isEmpty()
                        ? Instant.EPOCH
                        : history.entries()
                                .get(history.entries().size() - 1)
                                .moment()
                                .at());
        var evidence = new Evidence(acts.files);
        Scenario.Kind kind = kind(entry);
        var answers = new Answers(
                dice,
                vin(kind, entry),
                item -> Optional.<BigDecimal>ofNullable(scenario.typical().get(item)),
                evidence::of);
        Whereabouts.At here = whereabouts.at(number(entry));
        var at = new AtVehicle(
                acts,
                Crew.of(people, acts.ledger, acts.day, here),
                new ToolStore(acts.ledger, acts.day, here),
                clock,
                dice,
                here);
        return new VehicleWay(at, kind, operators, answers, odds);
    }

    private History history(int entry) {
        return acts.ledger.history(Subject.workOrder(number(entry)));
    }

    Scenario.Kind kind(int entry) {
        return scenario.kindOf(entry);
    }

    Line line(Scenario.Kind kind) {
        return Line.of(acts.releases.route(kind.route()).orElseThrow(), acts.releases);
    }

    private Dice dice(int entry, String leg) {
        return Dice.of(scenario.seed(), entry, leg);
    }

    String number(int entry) {
        return numbers + String.format("%04d", 200 + entry);
    }

    private String vin(Scenario.Kind kind, int entry) {
        return kind.vinPrefix()
                + dice(entry, "vin").digits(17 - kind.vinPrefix().length());
    }
}
