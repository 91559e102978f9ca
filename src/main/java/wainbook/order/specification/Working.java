package wainbook.order.specification;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.Plain;
import wainbook.engineering.energy.driving.Trace;
import wainbook.engineering.energy.pull.DriveUnit;
import wainbook.engineering.energy.store.Ageing;
import wainbook.engineering.energy.store.NeedErrors;
import wainbook.engineering.energy.store.NeedOdds;
import wainbook.engineering.specification.Night;
import wainbook.engineering.specification.PackLife;
import wainbook.engineering.specification.PackTable;
import wainbook.engineering.specification.PackType;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.AxleLimits;
import wainbook.engineering.weights.TwoAxles;
import wainbook.engineering.weights.axle.Axle;
import wainbook.engineering.weights.axle.AxleGroup;
import wainbook.engineering.weights.axle.Chassis;
import wainbook.engineering.weights.axle.LoadSpace;
import wainbook.engineering.weights.axle.PassengerClass;
import wainbook.engineering.weights.weighing.Change;
import wainbook.engineering.weights.weighing.Prediction;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.process.ComponentLibrary;
import wainbook.process.component.Component;

/**
 * From what was stated to the table of packs: pure, so that a page, an act and a test work out the same.
 *
 * @param library of the order’s kind of vehicle
 * @param packType one that the library has places for
 */
public record Working(
        Duty duty,
        ChassisFigures figures,
        ComponentLibrary library,
        String packType,
        LocalDate day,
        List<Trace> recorded) {

    private static final double HUNDRED = 100;
    private static final double SIGMA = NeedErrors.WITHOUT_TELEMATICS.sigma();

    public Working {
        recorded = List.copyOf(recorded);
    }

    /** What the wanted payload is, and where its middle lies behind the foremost axle. */
    public record Payload(double kg, double middleM) {}

    public SpecificationTable table() {
        LimitsThatCount limits = limits();
        Chassis chassis = chassis();
        Payload payload = payload();
        double middle = chassis.leverM(payload.middleM());
        double frontKg = frontLimitKg(limits);
        var packs = new PackTable(
                bare(),
                new AxleLimits(
                        frontKg,
                        rearLimitKg(limits),
                        limits.gross().kg(),
                        figures.steeringPercent().doubleValue() / HUNDRED),
                pack(),
                payload.kg(),
                middle,
                inFigures().day(),
                new NeedOdds(SIGMA),
                duty.worst().oddsPercent().doubleValue() / HUNDRED);
        return new SpecificationTable(
                packs,
                chassis,
                limits.axlesKg().stream().map(LimitsThatCount.Limit::kg).toList(),
                frontKg,
                new LoadSpace(middle, figures.places().loadLengthM().doubleValue()),
                drive(),
                duty.startOnPercent().doubleValue() / HUNDRED,
                new Night(
                        duty.charging().kw().doubleValue(),
                        duty.charging().hours().doubleValue()));
    }

    public DutyInFigures inFigures() {
        return new DutyInFigures(duty, figures, recorded);
    }

    /** Empty where ageing or days of use were not stated. */
    public Optional<PackLife> life() {
        return figures.ageing()
                .flatMap(ageing -> duty.use()
                        .map(use -> new PackLife(
                                table().packs(),
                                new Ageing(
                                        ageing.thousandCyclesPercent().doubleValue() / HUNDRED,
                                        ageing.yearPercent().doubleValue() / HUNDRED),
                                use.daysPerYear().doubleValue())));
    }

    /**
     * An axle whose tyres are what holds its group.
     *
     * @param axle from the front, 1 the foremost
     * @param share of its group’s load
     */
    public record HeldByTyres(int axle, double share, ChassisFigures.Tyres tyres) {}

    /** Empty where law or plate holds the group. */
    public Optional<HeldByTyres> heldByTyres(boolean front) {
        AxleGroup group = front ? chassis().front() : chassis().rear();
        int first = front ? 0 : steered();
        double groupKg = front ? frontLimitKg(limits()) : rearLimitKg(limits());
        return IntStream.range(0, group.axles().size())
                .filter(i -> limits().axlesKg().get(first + i).by() == LimitsThatCount.By.TYRES)
                .mapToObj(i -> held(first + i, group.axles().get(i).share()))
                .filter(held -> Plain.compared(held.tyres().axleKg() / held.share()) <= Plain.compared(groupKg))
                .findFirst();
    }

    private HeldByTyres held(int index, double share) {
        return new HeldByTyres(
                index + 1, share, limits().axlesKg().get(index).tyres().orElseThrow());
    }

    /** The tyres of an axle where they are what limits it. */
    public Optional<ChassisFigures.Tyres> tyresThatLimit(int axle) {
        LimitsThatCount.Limit limit = limits().axlesKg().get(axle - 1);
        return limit.by() == LimitsThatCount.By.TYRES ? limit.tyres() : Optional.empty();
    }

    public LimitsThatCount limits() {
        return LimitsThatCount.of(figures, day);
    }

    public double frontLimitKg(LimitsThatCount limits) {
        return limitKg(chassis().front(), limits.axlesKg().subList(0, steered()), Double.POSITIVE_INFINITY);
    }

    public double rearLimitKg(LimitsThatCount limits) {
        return limitKg(
                chassis().rear(),
                limits.axlesKg().subList(steered(), limits.axlesKg().size()),
                limits.rearGroup().map(LimitsThatCount.Limit::kg).orElse(Double.POSITIVE_INFINITY));
    }

    private static double limitKg(AxleGroup group, List<LimitsThatCount.Limit> axles, double groupKg) {
        return group.limitKg(
                groupKg, axles.stream().map(LimitsThatCount.Limit::kg).toList());
    }

    private int steered() {
        return figures.secondFrontM().isPresent() ? 2 : 1;
    }

    public Chassis chassis() {
        double wheelbaseM = figures.wheelbaseM().doubleValue();
        AxleGroup front = figures.secondFrontM()
                .map(second -> new AxleGroup(
                        List.of(new Axle(0, 0.5, false, false), new Axle(second.doubleValue(), 0.5, false, false))))
                .orElse(new AxleGroup(List.of(Axle.single(0, false))));
        AxleGroup rear = figures.secondRear()
                .map(second -> {
                    double share = second.sharePercent().doubleValue() / HUNDRED;
                    return new AxleGroup(List.of(
                            new Axle(wheelbaseM, 1 - share, true, false),
                            new Axle(
                                    wheelbaseM + second.behindM().doubleValue(),
                                    share,
                                    second.driven(),
                                    second.lifts())));
                })
                .orElse(new AxleGroup(List.of(Axle.single(wheelbaseM, true))));
        return new Chassis(front, rear);
    }

    /** Converted, without packs; its driver in. */
    private TwoAxles bare() {
        TwoAxles axles = received();
        for (Change change : changes(library.besidesPacks())) {
            axles = axles.with(change.massKg(), change.leverM());
        }
        return axles.with(
                PassengerClass.DRIVER_KG,
                chassis().leverM(figures.places().driverM().doubleValue()));
    }

    private TwoAxles received() {
        return chassis()
                .carrying(
                        figures.received().frontKg().doubleValue(),
                        figures.received().rearKg().doubleValue());
    }

    /** As it will stand on the weighbridge with so many packs: no driver, no payload. */
    public Prediction asBuilt(int packs) {
        List<Component> all = Stream.concat(
                        library.besidesPacks().stream(),
                        library.packs(packType).stream().limit(packs))
                .toList();
        return Prediction.of(received(), figures.received().uncertaintyKg().doubleValue(), changes(all));
    }

    private List<Change> changes(List<Component> parts) {
        Chassis chassis = chassis();
        return parts.stream()
                .map(part -> new Change(
                        part.title(),
                        part.addedKg().doubleValue(),
                        chassis.leverM(part.fromFrontM().doubleValue()),
                        part.massUncertaintyKg().doubleValue(),
                        part.placeUncertaintyM().doubleValue()))
                .toList();
    }

    private PackType pack() {
        Chassis chassis = chassis();
        List<Component> places = library.packs(packType);
        Component first = places.get(0);
        return new PackType(
                first.nominalKwh().orElseThrow().doubleValue(),
                first.massKg().doubleValue(),
                figures.store().windowPercent().doubleValue() / HUNDRED,
                figures.store().endOfLifePercent().doubleValue() / HUNDRED,
                places.stream()
                        .map(place -> chassis.leverM(place.fromFrontM().doubleValue()))
                        .toList());
    }

    /** @return for how many packs of this type there is room */
    public int places() {
        return library.packs(packType).size();
    }

    /** A bus’s payload is its people, seated and standing. */
    public Payload payload() {
        double middleM = figures.places().loadMiddleM().doubleValue();
        return duty.people()
                .map(people -> {
                    double person = people.passengerClass().personKg();
                    double standingM = figures.places()
                            .standingM()
                            .orElse(figures.places().loadMiddleM())
                            .doubleValue();
                    double moment = people.seated() * middleM + people.standing() * standingM;
                    int all = people.seated() + people.standing();
                    return new Payload(all * person, moment / all);
                })
                .orElse(new Payload(duty.payloadKg().doubleValue(), middleM));
    }

    private DriveUnit drive() {
        ChassisFigures.Drive unit = figures.drive();
        return new DriveUnit(
                unit.torqueNm().doubleValue(),
                unit.ratio().doubleValue(),
                unit.efficiencyPercent().doubleValue() / HUNDRED,
                unit.wheelRadiusM().doubleValue(),
                0);
    }

    public List<Prediction> predictions() {
        var all = new ArrayList<Prediction>();
        for (int packs = 1; packs <= library.packs(packType).size(); packs++) {
            all.add(asBuilt(packs));
        }
        return all;
    }
}
