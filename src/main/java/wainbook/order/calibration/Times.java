package wainbook.order.calibration;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import wainbook.engineering.energy.pull.DriveUnit;
import wainbook.engineering.energy.pull.Load;
import wainbook.engineering.energy.pull.PullAway;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.order.duty.Chosen;
import wainbook.order.specification.Specification;
import wainbook.order.specification.Worked;
import wainbook.order.specification.Working;
import wainbook.process.calibration.Setting;

/** What the times from rest to a speed come out at by calculation, so that a road test has something to be compared with. */
public record Times(SameTime asked, double limitMps2, Loaded empty, Loaded laden) {

    /** One load: its mass, and the time; without it where the vehicle does not come to that speed. */
    public record Loaded(double kg, OptionalDouble seconds) {}

    /** Empty without an acceptance, without an acceleration limit, or without a specification to take masses and drive from. */
    public static Optional<Times> of(Wanted wanted, Worked worked) {
        Optional<BigDecimal> limit = wanted.wishes().stream()
                .filter(wish -> wish.setting() == Setting.ACCELERATION_LIMIT)
                .map(Wish::value)
                .findFirst();
        Optional<Chosen> chosen = worked.specification().standing().map(Specification.Said::what);
        return wanted.sameTime()
                .flatMap(asked -> chosen.flatMap(one -> worked.working(one.packType())
                        .filter(working -> one.packs() <= working.table().rows().size())
                        .flatMap(working -> limit.map(cap -> of(asked, cap.doubleValue(), one.packs(), working)))));
    }

    private static Times of(SameTime asked, double limitMps2, int packs, Working working) {
        SpecificationTable table = working.table();
        SpecificationTable.Row row = table.rows().get(packs - 1);
        DriveUnit drive = new DriveUnit(
                table.drive().torqueNm(),
                table.drive().ratio(),
                table.drive().efficiency(),
                table.drive().wheelRadiusM(),
                asked.shaftKw().doubleValue() * 1000);
        return new Times(
                asked,
                limitMps2,
                loaded(row.packs().empty().totalKg(), asked, limitMps2, drive, table),
                loaded(row.packs().laden().totalKg(), asked, limitMps2, drive, table));
    }

    private static Loaded loaded(
            double kg, SameTime asked, double limitMps2, DriveUnit drive, SpecificationTable table) {
        var vehicle = table.packs().day().vehicle();
        var load = new Load(kg, vehicle.rotatingFactor(), vehicle.rolling(), vehicle.cdA(), vehicle.airDensity());
        return new Loaded(
                kg, new PullAway(drive, load, limitMps2).secondsTo(asked.toKmh().doubleValue()));
    }

    /** How far the two times lie apart, s; empty where one of them is never reached. */
    public OptionalDouble apartS() {
        return empty.seconds().isPresent() && laden.seconds().isPresent()
                ? OptionalDouble.of(
                        Math.abs(laden.seconds().getAsDouble() - empty.seconds().getAsDouble()))
                : OptionalDouble.empty();
    }

    public boolean accepted() {
        return apartS().isPresent()
                && apartS().getAsDouble() <= asked.toleranceS().doubleValue();
    }
}
