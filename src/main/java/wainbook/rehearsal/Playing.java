package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.process.CalibrationLibrary;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Route;
import wainbook.process.calibration.Calibration;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.CheckSheet;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.chance.Odds;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.crew.Crew;
import wainbook.rehearsal.crew.ToolStore;
import wainbook.rehearsal.crew.Whereabouts;
import wainbook.rehearsal.scenario.Evidence;
import wainbook.rehearsal.scenario.Line;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.rehearsal.time.Pace;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.rehearsal.time.Timetable;
import wainbook.rehearsal.vehicle.Answers;
import wainbook.rehearsal.vehicle.AtVehicle;
import wainbook.rehearsal.vehicle.Legs;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;

/**
 * Plays vehicles by their slot of entry, leg by leg. A leg of a vehicle's way is one transaction and is played once: begun
 * again, the playing goes on where it was left.
 */
final class Playing {

    /** How many have left the line and wait for their papers. */
    static final int WAITING_FOR_PAPERS = 3;

    private static final int LEG_TIMEOUT_S = 120;
    private static final int SURVEYED_BEFORE = 3;
    /** The last that is ordered when a demonstration begins. */
    static final int ORDERED_AHEAD = 8;

    static final int ORDERED_BEFORE = 15;
    private static final int PAPERS_AFTER = 1;
    private static final int HANDED_OVER_AFTER = 5;

    final Acts acts;
    final Scenario scenario;
    private final Odds odds;
    final Timetable times;
    final Instant present;
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

    /**
     * A whole way in one transaction: between two legs the vehicle would stand where people look at the line now. A vehicle
     * that is there already is left alone, since what becomes of it is up to the people who use the demonstration.
     */
    void whole(int entry, Runnable way) {
        if (history(entry).isEmpty()) {
            together(way);
        }
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
                .plusDays(dice.between(1, 6));
        Instant when = times.start(entry - ORDERED_BEFORE).plus(Duration.ofMinutes(dice.between(1, 60)));
        together(() -> way(entry, "ordered").ordered(when, promised));
    }

    /** What tells its work orders and containers from those of another past that is played in the same works. */
    String numbers() {
        return numbers;
    }

    /** The next vehicle that nobody has ordered yet, at the time of this clock; gives its number. */
    String orderedNow(PlayedClock clock) {
        int entry = ORDERED_AHEAD;
        while (!history(entry).isEmpty()) {
            entry++;
        }
        Dice dice = dice(entry, "ordered");
        Scenario.Kind kind = kind(entry);
        LocalDate promised = LocalDate.ofInstant(clock.instant(), zone).plusDays(dice.between(18, 26));
        way(at(number(entry), clock, dice), kind, vin(kind, entry), dice).ordered(clock.instant(), promised);
        return number(entry);
    }

    void surveyed(int entry, double share) {
        leg(
                entry,
                "survey",
                way -> way.surveyed(times.start(entry - SURVEYED_BEFORE), share),
                order -> order.phase() == Phase.ORDERED);
    }

    void finished(int entry) {
        finished(entry, leg -> {});
    }

    /** @param after each leg, in the vehicle's own time */
    void finished(int entry, Consumer<Line.Leg> after) {
        ordered(entry);
        surveyed(entry, 1);
        List<Line.Leg> legs = line(kind(entry)).legs();
        legs.forEach(leg -> {
            through(entry, leg, leg.equals(legs.get(legs.size() - 1)));
            after.accept(leg);
        });
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

    void onto(Legs way, int entry, Line.Leg leg) {
        way.onto(
                times.start(entry + leg.step()),
                leg.station(entry),
                leg.step() == 0 ? Direction.ONTO_LINE : Direction.FORWARD);
    }

    static boolean isBefore(WorkOrder order, Line.Leg leg) {
        return leg.step() == 0
                ? order.phase() == Phase.DONOR_ACCEPTED
                : order.phase() == Phase.ON_LINE
                        && order.stage()
                                .flatMap(order::stageAfter)
                                .filter(leg.stage()::equals)
                                .isPresent();
    }

    void papers(int entry, double share) {
        leg(
                entry,
                "papers",
                way -> way.documents(papersCome(entry), share, present),
                order -> order.phase() == Phase.FINISHED);
    }

    Instant papersCome(int entry) {
        return times.start(papersSlot(entry, steps()));
    }

    /** When the papers of a vehicle come in: never after the present slot for one that has left the line. */
    static int papersSlot(int entry, int steps) {
        return entry + steps - 1 + PAPERS_AFTER;
    }

    double pace(int entry, Line.Leg leg) {
        return pace(kind(entry), leg);
    }

    double pace(Scenario.Kind kind, Line.Leg leg) {
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

    interface Part {
        void on(Legs way);
    }

    interface Due {
        boolean is(WorkOrder order);
    }

    void leg(int entry, String name, Part part, Due due) {
        together(() -> {
            if (WorkOrder.of(history(entry)).filter(due::is).isPresent()) {
                part.on(way(entry, name));
            }
        });
    }

    void together(Runnable acting) {
        acts.ledger.together(LEG_TIMEOUT_S, () -> {
            acting.run();
            return true;
        });
    }

    Legs way(int entry, String leg) {
        History history = history(entry);
        var clock = new PlayedClock(
                history.isEmpty()
                        ? Instant.EPOCH
                        : history.entries()
                                .get(history.entries().size() - 1)
                                .moment()
                                .at());
        Dice dice = dice(entry, leg);
        return way(at(number(entry), clock, dice), kind(entry), vin(kind(entry), entry), dice);
    }

    AtVehicle at(String order, PlayedClock clock, Dice dice) {
        Whereabouts.At here = whereabouts.at(order);
        return new AtVehicle(acts, crew(here), tools(here), clock, dice, here);
    }

    /** @param vin that its people read, or will read, on the vehicle */
    Legs way(AtVehicle at, Scenario.Kind kind, String vin, Dice dice) {
        var evidence = new Evidence(acts.files);
        Optional<Calibration> calibration =
                CalibrationLibrary.of(acts.ledger.history(Subject.works())).of(kind.kind()).stream()
                        .filter(Calibration::released)
                        .findFirst();
        var answers = new Answers(dice, vin, item -> scenario.typical(kind, item), calibration, evidence::of);
        return new Legs(at, kind, operators, answers, odds);
    }

    /** Where somebody is for acts at no vehicle. */
    Whereabouts.At at(String place) {
        return whereabouts.at(place);
    }

    Crew crew(Whereabouts.At here) {
        return Crew.of(people, acts.ledger, acts.day, here);
    }

    ToolStore tools(Whereabouts.At here) {
        return new ToolStore(acts.ledger, acts.day, here);
    }

    History history(int entry) {
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

    String vin(Scenario.Kind kind, int entry) {
        return kind.vinPrefix()
                + dice(entry, "vin").digits(17 - kind.vinPrefix().length());
    }
}
