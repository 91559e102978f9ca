package wainbook.engineering.specification;

import wainbook.engineering.weights.Binding;

/** Why a number of packs will not do, and by how much. */
public sealed interface RuledOut {

    /** The wanted payload is more than a limit leaves. */
    record Payload(Binding binding, double shortKg) implements RuledOut {}

    /** At the end of life the worst day is not met with the wanted odds. */
    record Energy(double shortKwh) implements RuledOut {}
}
