package wainbook.permit.paper;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.permit.Permit;
import wainbook.permit.PermitForm;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Precaution;
import wainbook.permit.Work;

/**
 * Which rules of the permit a filled-in form does not keep. It is history by then: nothing is refused for it, and all of it is
 * said wherever the permit is shown.
 */
public final class PaperPermitRules {

    private PaperPermitRules() {}

    /**
     * Keys of what is not as it should be.
     *
     * @param latestEnd until when a permit issued at its time could be valid; empty off shift
     */
    public static List<String> remarks(PermitForm form, Optional<Instant> latestEnd) {
        var remarks = new ArrayList<String>();
        if (form.issuer().equals(form.receiver())) {
            remarks.add("permit.paperTwoPeople");
        }
        if (form.sort().asks().stream().anyMatch(group -> !ticked(form, group))) {
            remarks.add("permit.paperPrecautionMissing");
        }
        if (latestEnd.filter(end -> !form.validUntil().isAfter(end)).isEmpty()
                || !form.validUntil().isAfter(form.issuedAt())) {
            remarks.add("permit.paperBeyondShift");
        }
        if (form.receivedAt()
                .filter(received -> !received.isBefore(form.issuedAt()))
                .isEmpty()) {
            remarks.add("permit.paperNotReceived");
        }
        if (form.closedAt().isPresent()) {
            closed(form, form.closedAt().get(), remarks);
        }
        return List.copyOf(remarks);
    }

    private static void closed(PermitForm form, Instant closedAt, List<String> remarks) {
        Optional<Instant> back = form.handedBackAt().filter(at -> !at.isAfter(closedAt));
        if (back.isEmpty()) {
            remarks.add("permit.paperNotHandedBack");
        } else if (form.sort() == Work.HOT_WORK && closedAt.isBefore(back.get().plus(Permit.FIRE_WATCH))) {
            remarks.add("permit.paperFireWatch");
        }
    }

    private static boolean ticked(PermitForm form, Set<Precaution> group) {
        return form.precautions().stream().map(Ticked::precaution).anyMatch(group::contains);
    }
}
