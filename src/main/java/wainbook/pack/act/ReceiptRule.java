package wainbook.pack.act;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Finding;
import wainbook.pack.PackSaying.Insulation;
import wainbook.pack.PackSaying.Remark;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.Trigger;

/** What an inspection at receipt comes to. Works rule; what damage sets a pack aside is common practice, no source. */
record ReceiptRule(
        List<Seen> looked,
        Insulation insulation,
        BigDecimal voltageV,
        Optional<String> testSummary,
        Optional<String> certificate) {

    List<Remark> remarks() {
        var remarks = new ArrayList<Remark>();
        if (looked.stream().anyMatch(one -> !one.sound())) {
            remarks.add(Remark.NOT_SOUND);
        }
        switch (insulation.finding()) {
            case PASS -> {}
            case UNDECIDED -> remarks.add(Remark.INSULATION_UNDECIDED);
            case FAIL -> remarks.add(Remark.INSULATION_LOW);
        }
        if (voltageV.compareTo(insulation.workingV()) > 0) {
            remarks.add(Remark.VOLTAGE_ABOVE_PLATE);
        }
        if (testSummary.isEmpty()) {
            remarks.add(Remark.TEST_SUMMARY_MISSING);
        }
        if (certificate.isEmpty()) {
            remarks.add(Remark.CERTIFICATE_MISSING);
        }
        return List.copyOf(remarks);
    }

    /** Why it goes to quarantine at once, the first thing found. */
    Optional<Trigger> trigger() {
        return looked.stream()
                .filter(one -> !one.sound())
                .map(Seen::what)
                .map(Looked::unsound)
                .flatMap(Optional::stream)
                .findFirst()
                .or(() ->
                        insulation.finding() == Finding.FAIL ? Optional.of(Trigger.ISOLATION_LOST) : Optional.empty());
    }

    Verdict verdict() {
        if (trigger().isPresent()) {
            return Verdict.QUARANTINED;
        }
        return remarks().isEmpty() ? Verdict.ACCEPTED : Verdict.SET_ASIDE;
    }
}
