package wainbook.handover.road;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.station.ItemState;
import wainbook.station.ItemState.Status;

/** What a vehicle's use on the road rests on: every item of its brakes, its steering and its joints of class A. */
public record RoadEvidence(List<Line> lines) {

    /** Why an item is here. */
    public enum Sort {
        BRAKES("Brakes"),
        STEERING("Steering"),
        CLASS_A("ClassA");

        private final String key;

        Sort(String key) {
            this.key = key;
        }

        /** The end of the keys of its texts. */
        public String key() {
            return key;
        }
    }

    /**
     * @param after whether it is done after the road test, so that it need not be done yet; failed, it bars all the same
     */
    public record Line(String stage, Sort sort, ItemState item, boolean after) {

        public boolean holds() {
            return switch (item.status()) {
                case PASSED -> true;
                case OPEN, WAITING, HANDED_ON -> after;
                case NOT_APPLICABLE,
                        FACTS_MISSING,
                        FAILED,
                        NONCONFORMING,
                        STALE,
                        CONCEDED,
                        CARRIED_OVER,
                        RE_SEQUENCED -> false;
            };
        }

        private boolean givenOn() {
            return item.status() == Status.CARRIED_OVER || item.status() == Status.RE_SEQUENCED;
        }

        private String name() {
            return item.line().name();
        }

        private String print() {
            return stage + " " + name() + " "
                    + (after && holds()
                            ? "after"
                            : item.status() + " "
                                    + item.passing().map(Entry::hash).orElse("-"));
        }
    }

    /** Work given to a later stage counts there, once the vehicle has been there. */
    public RoadEvidence {
        Set<String> there =
                lines.stream().filter(line -> !line.givenOn()).map(Line::name).collect(Collectors.toSet());
        lines = lines.stream()
                .filter(line -> line.item().status() != Status.NOT_APPLICABLE)
                .filter(line -> !line.givenOn() || !there.contains(line.name()))
                .toList();
    }

    public List<Line> wanting() {
        return lines.stream().filter(line -> !line.holds()).toList();
    }

    public boolean hasNothingOf(Sort sort) {
        return lines.stream().noneMatch(line -> line.sort() == sort);
    }

    /** How many entries that it rests on are this person's. */
    public long by(String who) {
        return lines.stream()
                .map(line -> line.item().passing())
                .flatMap(Optional::stream)
                .filter(entry -> entry.moment().who().equals(who))
                .count();
    }

    /** Changes with any of the entries that it rests on; doing what is done after the road test changes nothing. */
    public String fingerprint() {
        String text = lines.stream().map(Line::print).collect(Collectors.joining("\n"));
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
