package wainbook.ledger.bytes;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.Kinds;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;

/**
 * The statement that is hashed: everything about one entry. Field order is irrelevant, the canonical form sorts.
 *
 * @param format {@link #FORMAT}; inside what is hashed, so that no other reading of the same bytes is possible
 * @param previous hash of the entry before in the stream; {@link #NOTHING} for the first
 */
public record Said(
        String format,
        UUID id,
        UUID stream,
        String subject,
        long number,
        String kind,
        String who,
        Instant at,
        Optional<Instant> deviceAt,
        Optional<String> station,
        String previous,
        JsonNode body) {

    static final String FORMAT = "wainbook.entry/1";

    public static final String NOTHING = "0".repeat(64);

    public static Said of(UUID id, Subject subject, long number, String previous, Moment moment, Saying saying) {
        return new Said(
                FORMAT,
                id,
                subject.stream(),
                subject.toString(),
                number,
                Kinds.name(saying.getClass()),
                moment.who(),
                moment.at(),
                moment.deviceAt(),
                moment.station(),
                previous,
                CanonicalJson.tree(Whole.check(saying)));
    }

    /** Reads the text strictly: every form but the canonical one is wrong, and the exception says what is. */
    public static Said parse(String text) {
        return known(CanonicalJson.read(CanonicalJson.parse(text), Said.class));
    }

    /** An entry as it is read over and over: half the work of {@link #parse}, which {@link wainbook.ledger.verification.Verification} does. */
    public static Entry stored(String text, String hash, Kinds kinds) {
        Said said = known(CanonicalJson.readStored(CanonicalJson.parseStored(text), Said.class));
        return said.entry(hash, CanonicalJson.readStored(said.body, said.type(kinds)));
    }

    private static Said known(Said said) {
        if (!FORMAT.equals(said.format)) {
            throw new IllegalArgumentException("format is " + said.format + ", not " + FORMAT);
        }
        return said;
    }

    public String text() {
        return CanonicalJson.write(this);
    }

    Entry entry(String hash, Kinds kinds) {
        return entry(hash, CanonicalJson.read(body, type(kinds)));
    }

    private Class<? extends Saying> type(Kinds kinds) {
        return kinds.type(kind).orElseThrow(() -> new IllegalArgumentException("kind " + kind + " is not known"));
    }

    private Entry entry(String hash, Saying saying) {
        return new Entry(
                id, Subject.parse(subject), number, new Moment(who, at, deviceAt, station), hash, Kinds.newest(saying));
    }

    public static String hash(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
