package wainbook.isolation.permit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wainbook.isolation.IsolationSaying;

/**
 * A permit to work on an isolation that is in force.
 *
 * @param readers who read it and may work under it with their own lock on; the receiver first
 * @param ended nobody works under it any more
 * @param cancelled the issuer took it back after that
 */
public record Permit(
        int number,
        String issuer,
        String receiver,
        List<String> pointsOfWork,
        Instant validUntil,
        boolean ownIsolation,
        List<String> readers,
        boolean ended,
        boolean cancelled) {

    public static Permit issued(String issuer, IsolationSaying.PermitIssued said) {
        return new Permit(
                said.permit(),
                issuer,
                said.receiver(),
                List.copyOf(said.pointsOfWork()),
                said.validUntil(),
                said.ownIsolation(),
                List.of(),
                false,
                false);
    }

    public boolean received() {
        return readers.contains(receiver);
    }

    public Permit readBy(String person) {
        var more = new ArrayList<>(readers);
        if (!more.contains(person)) {
            more.add(person);
        }
        return with(more, ended, cancelled);
    }

    public Permit leftBy(String person) {
        return with(readers.stream().filter(reader -> !reader.equals(person)).toList(), ended, cancelled);
    }

    public Permit end() {
        return with(List.of(), true, cancelled);
    }

    public Permit cancel() {
        return with(List.of(), true, true);
    }

    private Permit with(List<String> readers, boolean ended, boolean cancelled) {
        return new Permit(
                number,
                issuer,
                receiver,
                pointsOfWork,
                validUntil,
                ownIsolation,
                List.copyOf(readers),
                ended,
                cancelled);
    }
}
