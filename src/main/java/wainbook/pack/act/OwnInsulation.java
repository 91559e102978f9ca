package wainbook.pack.act;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.engineering.Verdict;
import wainbook.engineering.electrical.IsolationDirect;
import wainbook.pack.PackSaying.Finding;
import wainbook.pack.PackSaying.Insulation;
import wainbook.pack.PackSaying.Way;
import wainbook.works.instruments.Instrument;

/** A pack's own insulation resistance as it was read, judged by the calculation for insulation testers. */
public record OwnInsulation(
        Way way, BigDecimal measuredOhm, boolean openEnded, BigDecimal testV, BigDecimal workingV, String instrument) {

    /** UN R100 5.1.3.2, limit of a whole vehicle; asked of each pack by itself as a works rule. */
    public static final BigDecimal LIMIT_OHM_PER_VOLT = new BigDecimal("500");

    static final String KIND = "insulation-tester";

    private static final BigDecimal OHM_PER_MOHM = BigDecimal.valueOf(1_000_000);

    BigDecimal measuredMOhm() {
        return measuredOhm.divide(OHM_PER_MOHM);
    }

    /** Judged, or why a reading like this judges nothing. */
    Outcome<Insulation> judged(Instrument tool) {
        BigDecimal accuracy = tool.accuracyPercent().orElse(BigDecimal.ZERO);
        var inputs = new IsolationDirect.Inputs(
                openEnded ? Optional.empty() : Optional.of(measuredOhm.doubleValue()),
                openEnded ? Optional.of(measuredOhm.doubleValue()) : Optional.empty(),
                testV.doubleValue(),
                workingV.doubleValue(),
                LIMIT_OHM_PER_VOLT.doubleValue(),
                accuracy.doubleValue());
        return new IsolationDirect()
                .of(inputs)
                .fold(
                        working -> Outcome.done(new Insulation(
                                way,
                                measuredOhm,
                                openEnded,
                                testV,
                                workingV,
                                LIMIT_OHM_PER_VOLT,
                                accuracy,
                                tool.code(),
                                tool.due().orElseThrow(),
                                finding(working.decision().orElseThrow().verdict()))),
                        faults -> Outcome.refused(List.of(Reason.of("pack.insulationFault", Reason.WORKS_RULE)
                                .liftedAt("#measured"))),
                        refusal -> Outcome.refused(List.of(Reason.of(
                                        "pack.testVoltageLow",
                                        "ISO 6469-3, as AS ISO 6469.3:2014 8.2.2",
                                        testV.toPlainString(),
                                        workingV.toPlainString())
                                .liftedAt("#testV"))));
    }

    private static Finding finding(Verdict verdict) {
        return switch (verdict) {
            case PASS, NONE -> Finding.PASS;
            case UNDECIDED -> Finding.UNDECIDED;
            case FAIL -> Finding.FAIL;
        };
    }
}
