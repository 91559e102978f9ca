package wainbook.order.hold;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.order.OrderSaying.Stops;
import wainbook.page.Words;
import wainbook.works.Role;

/**
 * A hold that no entry of the vehicle’s own record puts on: it stands for as long as something elsewhere is open, and is lifted
 * there.
 *
 * @param title what holds, in words
 * @param roles who must act: one of them
 * @param path where it is lifted
 * @param former the vehicle’s former order whose record it is open in; absent where it is of this one
 */
public record HoldByRule(
        String title,
        String reason,
        Set<Stops> stops,
        Instant since,
        Set<Role> roles,
        String path,
        Optional<String> former) {

    public HoldByRule {
        stops = Set.copyOf(stops);
        roles = Set.copyOf(roles);
    }

    /** The one reason that every act gives which it stops. */
    public Reason against() {
        return Reason.of("order.heldByRule", Reason.WORKS_RULE, title, reason, stopsInWords(), rolesInWords())
                .liftedAt(path);
    }

    public String stopsInWords() {
        return HoldChoices.words(stops.stream().sorted().toList());
    }

    public String rolesInWords() {
        return roles.stream()
                .sorted()
                .map(role -> Words.of("works." + role.word()))
                .collect(Collectors.joining(", "));
    }
}
