package wainbook.engineering.electrical;

import wainbook.engineering.Sentence;
import wainbook.engineering.Source;

/** Sources and cautions that several electrical calculations share. */
final class Origins {

    static final Source ISOLATION_LIMITS = Source.seen("UN R100, 03 series", "5.1.3.1 and 5.1.3.2");
    static final Source WORKING_VOLTAGE = Source.seen("UN R94", "Annex 11, fifth step");
    static final Source GUARD_BAND = Source.seen("ILAC-G8:09/2019", "4.2.2, guard band equal to U");
    static final Source CONDUCTANCES = Source.memory("Kirchhoff’s current law", "parallel conductances add");
    static final Source DECAY = Source.memory("Capacitor with resistor", "U(t) = U0 · e^(−t/RC), E = ½ C U²");

    static final Sentence MAKES_NOTHING_SAFE = Sentence.of("engineering.caution.makesNothingSafe");
    static final Sentence LOCAL_RULES = Sentence.of("engineering.caution.localRules");
    static final Sentence PACK_STAYS_LIVE = Sentence.of("engineering.caution.packStaysLive");
    static final Sentence LIVE_WORK = Sentence.of("engineering.caution.liveWork");

    private Origins() {}
}
