package wainbook.gate;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.gate.GateSaying.Refused;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.CalibrationSaying.CalibrationAsked;
import wainbook.order.specification.SpecificationSaying.Specified;
import wainbook.station.StageRecord;

/**
 * The gate of one stage of one vehicle as it stands.
 *
 * @param fingerprint of the evidence now
 * @param signed the last signature, whether or not it still holds
 * @param askedAnew whether the vehicle was specified or its calibration asked for anew after the signature of its last gate, which
 *     compared them
 */
public record Gate(
        StageRecord record, String fingerprint, Optional<Entry> signed, Optional<Entry> refused, boolean askedAnew) {

    /** Where a gate is. */
    public enum Standing {
        UNSIGNED,
        SIGNED,
        CHANGED_SINCE_SIGNED,
        REFUSED
    }

    public static Gate of(History history, StageRecord record) {
        Optional<Entry> signed = Optional.empty();
        Optional<Entry> refused = Optional.empty();
        boolean anew = false;
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof SignedOff said && said.stage().equals(record.stage())) {
                signed = Optional.of(entry);
                refused = Optional.empty();
                anew = false;
            } else if (entry.saying() instanceof Refused said && said.stage().equals(record.stage())) {
                signed = Optional.empty();
                refused = Optional.of(entry);
            } else if (entry.saying() instanceof Specified || entry.saying() instanceof CalibrationAsked) {
                anew = true;
            }
        }
        return new Gate(record, fingerprint(record), signed, refused, anew && last(history, record));
    }

    public Standing standing() {
        if (refused.isPresent()) {
            return Standing.REFUSED;
        }
        return signed.map(entry ->
                        !askedAnew && ((SignedOff) entry.saying()).fingerprint().equals(fingerprint)
                                ? Standing.SIGNED
                                : Standing.CHANGED_SINCE_SIGNED)
                .orElse(Standing.UNSIGNED);
    }

    private static boolean last(History history, StageRecord record) {
        return WorkOrder.of(history)
                .filter(order -> order.ordered().stages().contains(record.stage()))
                .filter(order -> order.stageAfter(record.stage()).isEmpty())
                .isPresent();
    }

    /** Over each item, how it stands, and the hashes of all entries about it: any change of the evidence changes it. */
    private static String fingerprint(StageRecord record) {
        String evidence = record.items().stream()
                .map(item -> item.key() + " " + item.status() + " "
                        + item.entries().stream().map(Entry::hash).collect(Collectors.joining(" ")))
                .collect(Collectors.joining("\n"));
        String under = record.binding().sheet() + " " + record.binding().revision() + "\n" + evidence;
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(under.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
