package wainbook.works.instruments;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The last day on which an instrument may be used, that day included: the day of its certificate, never after the day printed
 * on it. Insulating gloves are tested again six months after their first issue or their last test, whichever is later (OSHA
 * letter of 25 January 2019 on 29 CFR 1910.137), and are first issued within twelve months of a test (from a university's page
 * on their care); a certificate that ends earlier wins, since a works may be stricter.
 *
 * @param certificate last day of the certificate
 * @param tested day of the last calibration or test
 * @param firstIssued day of the first issue; empty while it has never left the store
 * @param expires last day printed on it
 */
record LastGoodDay(
        String kind,
        Optional<LocalDate> certificate,
        Optional<LocalDate> tested,
        Optional<LocalDate> firstIssued,
        Optional<LocalDate> expires) {

    static final String GLOVES = "gloves";

    Optional<LocalDate> day() {
        if (certificate.isEmpty()) {
            return Optional.empty();
        }
        return Stream.of(certificate, expires, gloveTest())
                .flatMap(Optional::stream)
                .min(LocalDate::compareTo);
    }

    private Optional<LocalDate> gloveTest() {
        if (!kind.equals(GLOVES) || tested.isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = tested.orElseThrow();
        return Optional.of(firstIssued
                .map(issued -> (issued.isAfter(last) ? issued : last).plusMonths(6))
                .orElseGet(() -> last.plusMonths(12)));
    }
}
