package wainbook.engineering.specification;

import wainbook.engineering.weights.Binding;

/** Why a number of packs will not do, and by how much. */
public sealed interface RuledOut {

    /** The wanted payload is more than a limit leaves. */
    record Payload(Binding binding, double shortKg) implements RuledOut {}

    /** At the end of life the worst day is not met with the wanted odds. */
    record Energy(double shortKwh) implements RuledOut {}

    /** A recorded second asks for more power than so many packs give. */
    record Power(int second, double neededW, double greatestW) implements RuledOut {}

    /** The front group carries too much with a part of the load left. */
    record PartLoad(double overKg) implements RuledOut {}

    /**
     * An axle carries too much while the lifting axle is up and nothing is loaded.
     *
     * @param axle counted from the front, 1 the foremost
     */
    record Lifted(int axle, double overKg) implements RuledOut {}

    /** It does not start on the slope that is asked; both rise over run. */
    record Start(double grade, double asked) implements RuledOut {}

    /** A full charge takes longer than the vehicle stands. */
    record Charging(double hours, double standsHours) implements RuledOut {}
}
