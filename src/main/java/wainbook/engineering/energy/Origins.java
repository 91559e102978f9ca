package wainbook.engineering.energy;

import wainbook.engineering.Sentence;
import wainbook.engineering.Source;

/** Sources and cautions that several calculations of a duty share. */
final class Origins {

    static final Source MOTION = Source.memory(
            "Longitudinal dynamics of vehicles, any textbook", "inertia, grade, rolling and air at the wheels");

    static final Sentence WORST_DAY = Sentence.of("engineering.caution.worstDay");
    static final Sentence MEASURE_FIRST = Sentence.of("engineering.caution.measureTheFirst");
    static final Sentence MAKERS_PACK = Sentence.of("engineering.caution.makersPack");
    static final Sentence APPROVAL_DECIDES = Sentence.of("engineering.caution.approvalDecides");

    private Origins() {}
}
