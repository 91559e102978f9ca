package wainbook.pack;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * What a pack that leaves or arrives needs, as a reminder for whoever asks the dangerous-goods adviser. It is no shipping
 * document and decides nothing.
 */
public record TransportNote(Condition condition, boolean inVehicle) {

    /** How the pack is, as the works sees it. */
    public enum Condition {
        SOUND,
        DAMAGED,
        /** Liable to react dangerously. */
        REACTIVE
    }

    /** How well a line is known. */
    public enum Standing {
        /** Read in public texts on ADR 2025: special provisions 310 and 376, an adviser's page, guides to battery transport. */
        READ,
        MEMORY,
        PRACTICE
    }

    /** One line; its words lie with the messages of the room. */
    @SuppressWarnings("ImmutableEnumChecker") // The sets are copies that nobody can change.
    public enum Line {
        UN_3480(Standing.READ, false, Condition.values()),
        UN_3556(Standing.READ, true, Condition.values()),
        UN_3171(Standing.READ, true, Condition.values()),
        TEST_SUMMARY(Standing.READ, false, Condition.values()),
        SP_310(Standing.READ, false, Condition.SOUND),
        P_903(Standing.READ, false, Condition.SOUND),
        LP_903(Standing.MEMORY, false, Condition.SOUND),
        SP_376(Standing.READ, false, Condition.DAMAGED, Condition.REACTIVE),
        P_908(Standing.READ, false, Condition.DAMAGED),
        P_911(Standing.READ, false, Condition.REACTIVE),
        AIR_CHARGE(Standing.READ, false, Condition.SOUND),
        ROAD_CHARGE(Standing.MEMORY, false, Condition.SOUND),
        VEHICLE_DAMAGED(Standing.PRACTICE, true, Condition.DAMAGED, Condition.REACTIVE),
        TERMINALS(Standing.PRACTICE, false, Condition.values()),
        WATCHED(Standing.PRACTICE, false, Condition.DAMAGED, Condition.REACTIVE),
        RESCUE_SHEET(Standing.PRACTICE, true, Condition.values());

        private final Standing standing;
        private final boolean vehicle;
        private final Set<Condition> conditions;

        Line(Standing standing, boolean vehicle, Condition... conditions) {
            this.standing = standing;
            this.vehicle = vehicle;
            this.conditions = Set.of(conditions);
        }

        public Standing standing() {
            return standing;
        }
    }

    public List<Line> lines() {
        return Arrays.stream(Line.values())
                .filter(line -> line.vehicle == inVehicle)
                .filter(line -> line.conditions.contains(condition))
                .toList();
    }

    /** What the record says of a pack; nothing on record makes one liable to react dangerously but an alarm. */
    public static Condition of(Pack pack) {
        if (pack.quarantine().filter(Quarantine::stands).isEmpty()) {
            return Condition.SOUND;
        }
        return pack.quarantine()
                        .filter(one -> one.said().heating() || one.alarm().isPresent())
                        .isPresent()
                ? Condition.REACTIVE
                : Condition.DAMAGED;
    }
}
