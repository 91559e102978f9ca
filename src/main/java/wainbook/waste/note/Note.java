package wainbook.waste.note;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A note by which one container leaves: what stands in its parts A to D. Part E comes back from the site.
 *
 * @param code of a consignment note in the England form; a transfer note's own number
 * @param producer name and address of the works, with its site
 * @param sic code of the works' activity
 * @param process that gave rise to the waste
 * @param components of the waste that matter, with their shares
 * @param hazards HP codes; empty for waste that is not hazardous
 * @param packing number, kind and size of the containers
 * @param transport UN number, name, class and packing group; empty where none applies
 * @param massKg as the note says
 * @param weighbridge number of the ticket, where the note's mass is a weighbridge's
 */
public record Note(
        Sort sort,
        String code,
        LocalDate on,
        String producer,
        String sic,
        String process,
        String wasteCode,
        String description,
        String components,
        String hazards,
        String packing,
        String transport,
        BigDecimal massKg,
        Optional<String> weighbridge,
        Checked carrier,
        String vehicle,
        Checked site) {

    /** Which paper it is, and how many years it is kept. */
    public enum Sort {
        CONSIGNMENT(3),
        TRANSFER(2);

        private final int years;

        Sort(int years) {
            this.years = years;
        }

        /** The last day on which it must still be there. */
        public LocalDate keptUntil(LocalDate on) {
            return on.plusYears(years);
        }

        public static Sort of(boolean hazardous) {
            return hazardous ? CONSIGNMENT : TRANSFER;
        }
    }

    /**
     * A carrier's registration or a site's permit as it was looked up.
     *
     * @param name and address of the firm
     * @param seenOn the day on which somebody looked at the public register
     * @param by who looked, by number
     */
    public record Checked(String name, String number, LocalDate seenOn, String by) {}

    public LocalDate keptUntil() {
        return sort.keptUntil(on);
    }
}
