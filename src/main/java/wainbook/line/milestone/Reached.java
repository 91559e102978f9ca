package wainbook.line.milestone;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Returned;
import wainbook.station.StationSaying.Voided;

/** The milestones that entries of one order reached: the first entry of each that was not voided by the last of them. */
public record Reached(Map<Milestone, Entry> by) {

    public Reached {
        by = Map.copyOf(by);
    }

    public static Reached of(List<Entry> entries) {
        Optional<Ordered> ordered = Optional.empty();
        boolean back = false;
        Set<UUID> voided = new HashSet<>();
        for (Entry entry : entries) {
            if (entry.saying() instanceof Voided said) {
                voided.add(said.entry());
            }
        }
        Map<Milestone, Entry> by = new EnumMap<>(Milestone.class);
        for (Entry entry : entries) {
            if (entry.saying() instanceof Ordered said) {
                ordered = Optional.of(said);
            } else if (entry.saying() instanceof Returned) {
                back = true;
            }
            if (!voided.contains(entry.id())) {
                Milestone.of(entry.saying(), back ? Optional.empty() : ordered)
                        .ifPresent(milestone -> by.putIfAbsent(milestone, entry));
            }
        }
        return new Reached(by);
    }
}
