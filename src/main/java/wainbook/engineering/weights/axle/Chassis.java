package wainbook.engineering.weights.axle;

import java.util.List;
import java.util.stream.Stream;
import wainbook.engineering.weights.TwoAxles;

/**
 * A vehicle of two, three or four axles as statics can solve it: a front group and a rear one, each at its effective centre. More than
 * two groups would need the springs.
 */
public record Chassis(AxleGroup front, AxleGroup rear) {

    /** @return between the effective centres */
    public double wheelbaseM() {
        return rear.centreM() - front.centreM();
    }

    /** @return a place behind the foremost axle as one behind the front group’s centre, as {@link TwoAxles} wants it */
    public double leverM(double fromFrontM) {
        return fromFrontM - front.centreM();
    }

    public TwoAxles carrying(double frontKg, double rearKg) {
        return new TwoAxles(wheelbaseM(), frontKg, rearKg);
    }

    /**
     * The same masses with the lifting axle up: the moment about the front group stays. A lifted axle’s own mass keeps its place; exact
     * where the group’s sharing is that of the statics before.
     */
    public TwoAxles lifted(TwoAxles lowered) {
        double shorterM = new Chassis(front, rear.lifted()).wheelbaseM();
        double rearKg = lowered.rearKg() * lowered.wheelbaseM() / shorterM;
        return new TwoAxles(shorterM, lowered.totalKg() - rearKg, rearKg);
    }

    /** The load of every axle from the front. */
    public List<Double> loadsKg(TwoAxles groups) {
        return Stream.concat(front.loadsKg(groups.frontKg()).stream(), rear.loadsKg(groups.rearKg()).stream())
                .toList();
    }

    /** @return of the total, on driven axles */
    public double drivenShare(TwoAxles groups) {
        return (front.drivenShare() * groups.frontKg() + rear.drivenShare() * groups.rearKg()) / groups.totalKg();
    }

    public int axles() {
        return front.axles().size() + rear.axles().size();
    }
}
