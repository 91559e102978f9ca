package wainbook.engineering.tightening;

import java.util.List;
import wainbook.engineering.Sentence;

/** What every page about torque says. */
final class Cautions {

    static final List<Sentence> TORQUE = List.of(
            Sentence.of("engineering.caution.makerFirst"), Sentence.of("engineering.caution.torqueIsNotPreload"));

    private Cautions() {}
}
