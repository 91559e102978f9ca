package wainbook.station.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.process.outline.Outline;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.outline.Marked.Standing;

/** The items of a sheet by where they lie on the vehicle; without an outline they lie nowhere. */
public record InZones(Optional<Outline> outline, StageRecord record) {

    /** The name of an item's zone as the drawing and the page's address know it. */
    public Optional<String> zone(ItemState state) {
        return outline.map(drawn -> Drawing.zoneOf(marked(state, 0, false), drawn));
    }

    /** The next item that may be worked on: there, or anywhere when no place is named. */
    public Optional<ItemState> next(Optional<String> zone) {
        List<ItemState> open = record.unsettled().stream()
                .filter(state -> zone.isEmpty() || zone(state).equals(zone))
                .toList();
        return open.stream()
                .filter(state -> state.status() != ItemState.Status.NONCONFORMING)
                .filter(state -> state.item().after().stream()
                        .allMatch(before -> record.item(before)
                                .map(other -> other.status().settled())
                                .orElse(true)))
                .findFirst()
                .or(() -> zone.isPresent() ? Optional.empty() : open.stream().findFirst());
    }

    /** The first item there that is not settled, else the first of all. */
    public Optional<ItemState> first(String zone) {
        List<ItemState> here = record.items().stream()
                .filter(state -> zone(state).equals(Optional.of(zone)))
                .toList();
        return here.stream()
                .filter(state -> !state.status().settled())
                .findFirst()
                .or(() -> here.stream().findFirst());
    }

    public Optional<Drawing> drawing(Optional<ItemState> inHand, Optional<String> taken) {
        return outline.map(drawn -> {
            List<Marked> items = new ArrayList<>();
            for (ItemState state : record.items()) {
                boolean now =
                        inHand.filter(known -> known.key().equals(state.key())).isPresent();
                items.add(marked(state, items.size() + 1, now));
            }
            return Drawing.of(drawn, items, taken);
        });
    }

    public static Standing standing(ItemState state) {
        return switch (state.status()) {
            case FAILED, NONCONFORMING, STALE -> Standing.FAILED;
            case PASSED, CONCEDED, NOT_APPLICABLE, CARRIED_OVER, RE_SEQUENCED, HANDED_ON -> Standing.DONE;
            case OPEN, WAITING, FACTS_MISSING -> Standing.OPEN;
        };
    }

    private static Marked marked(ItemState state, int number, boolean inHand) {
        return new Marked(
                number, state.key(), state.item().title(), state.item().zone(), standing(state), inHand);
    }
}
